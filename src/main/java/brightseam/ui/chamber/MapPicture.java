package brightseam.ui.chamber;

import brightseam.ui.parts.Mark;
import java.util.List;

/**
 * The weld map's picture with a mark on every joint.
 *
 * @param address where the picture is
 * @param spots the marks, by their place in thousandths of width and height
 */
record MapPicture(String address, List<Spot> spots) {

    /** Copies the list. */
    MapPicture {
        spots = List.copyOf(spots);
    }

    /** One joint on the picture. */
    record Spot(String number, int xThousandths, int yThousandths, Mark.Kind mark) {}
}
