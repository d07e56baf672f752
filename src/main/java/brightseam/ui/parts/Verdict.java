package brightseam.ui.parts;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import java.util.List;
import java.util.stream.Collectors;

/** What became of a scan or a touch. */
public sealed interface Verdict {

    /** It counts. */
    record Accepted(String word, String reason) implements Verdict {}

    /** It does not count. */
    record Refused(String word, String reason, String wayOut) implements Verdict {}

    /** Nothing to say yet: the card itself asks on. */
    record Silent() implements Verdict {}

    /** Somebody else's badge: the tablet goes to them. */
    record HandOver(BadgeId badge) implements Verdict {}

    /** The disk failed. */
    static Verdict notStored() {
        return new Refused("NOT STORED", "This does not count: the disk did not take it. Nothing else was lost.",
                "Do it once more. If it comes again, write it on paper and call the administrator.");
    }

    /** {@code refusals} in words: the first refusal's word and way out, every reason once. */
    static Verdict refused(Wording wording, List<Refusal> refusals) {
        List<Explanation> why = refusals.stream().map(wording::explain).distinct().toList();
        return new Refused(why.getFirst().word(),
                why.stream().map(Explanation::reason).distinct().collect(Collectors.joining(" ")),
                why.getFirst().wayOut());
    }
}
