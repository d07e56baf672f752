package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.traveller.Disposition;
import brightseam.traveller.Nonconformance.Cause;
import java.util.List;
import java.util.Optional;

/**
 * A nonconformance with its disposition.
 *
 * @param number from 1 in its traveller
 * @param cause what sort
 * @param step where it arose, as number and title
 * @param pass in which passage
 * @param pieces which pieces, when it was opened
 * @param text what was found, in words
 * @param at when
 * @param by who reported it, or the server where it noticed it
 * @param rejection the inspector's mark, where an inspector rejected
 * @param decision empty while nobody has decided
 */
public record Finding(
        int number,
        Cause cause,
        String step,
        int pass,
        List<Integer> pieces,
        String text,
        Moment at,
        Who by,
        Optional<Mark> rejection,
        Optional<Decided> decision) {

    /** What became of it: returned to {@code returnedTo} where it was rework. */
    public record Decided(Disposition disposition, Optional<String> returnedTo, String reason, Mark mark) {}

    /** Copies the list. */
    public Finding {
        pieces = List.copyOf(pieces);
    }

    Finding decided(Decided how) {
        return new Finding(number, cause, step, pass, pieces, text, at, by, rejection, Optional.of(how));
    }
}
