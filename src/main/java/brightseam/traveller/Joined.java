package brightseam.traveller;

import brightseam.kernel.TravellerId;
import java.util.List;

/**
 * A traveller's part in a joint.
 *
 * @param traveller whose pieces are welded there
 * @param pieces which of them, ascending; empty where it is not known which, so that it may be any of the lot
 */
public record Joined(TravellerId traveller, List<Integer> pieces) {

    /** Sorts the pieces. */
    public Joined {
        pieces = pieces.stream().sorted().distinct().toList();
    }

    /** The pieces still in {@code lot} that {@code parts} name; all of them where they name the lot alone. */
    public static List<Integer> pieces(Traveller lot, List<Joined> parts) {
        List<Integer> named = parts.stream().filter(part -> part.traveller().equals(lot.id()))
                .flatMap(part -> part.pieces().stream()).sorted().distinct().toList();
        return named.isEmpty() ? lot.pieces() : named.stream().filter(lot.pieces()::contains).toList();
    }

    /** The whole lot, where nobody says which pieces. */
    public static Joined lot(TravellerId traveller) {
        return new Joined(traveller, List.of());
    }
}
