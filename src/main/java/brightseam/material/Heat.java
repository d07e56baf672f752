package brightseam.material;

import brightseam.kernel.HeatId;
import java.time.Instant;
import java.util.Optional;

/**
 * One melt of metal in one form, with its certificate.
 *
 * @param id its label in the shop
 * @param grade titanium grade as procedures name it, such as {@code 9}
 * @param form one lower-case word, such as {@code tube}, {@code bar} or {@code wire}
 * @param dimensions as ordered, with units, such as {@code 38.1 x 1.65 mm}
 * @param maker whose certificate it is
 * @param certificateNumber the maker's number of it
 * @param receivedAt when it came into the shop
 * @param holdReason why nothing may be made of it now; empty where it is not on hold
 */
public record Heat(
        HeatId id,
        String grade,
        String form,
        String dimensions,
        String maker,
        String certificateNumber,
        Instant receivedAt,
        Optional<String> holdReason) {

    /** The heat after {@code event}; {@code before} is empty for the first one only. */
    public static Heat evolve(Optional<Heat> before, HeatEvent event) {
        return switch (event) {
            case HeatEvent.Registered first -> new Heat(
                    first.heat(), first.grade(), first.form(), first.dimensions(), first.maker(),
                    first.certificateNumber(), first.receivedAt(), Optional.empty());
            case HeatEvent.HoldPut put -> known(before, event).with(Optional.of(put.reason()));
            case HeatEvent.HoldReleased ignored -> known(before, event).with(Optional.empty());
        };
    }

    /** Whether nothing may be made of it now. */
    public boolean isOnHold() {
        return holdReason.isPresent();
    }

    private static Heat known(Optional<Heat> before, HeatEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not registered: " + event.heat()));
    }

    private Heat with(Optional<String> reason) {
        return new Heat(id, grade, form, dimensions, maker, certificateNumber, receivedAt, reason);
    }
}
