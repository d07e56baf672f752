package brightseam.ui.board;

import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.traveller.Missing;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Phase;
import brightseam.traveller.Traveller;
import brightseam.traveller.Window;
import brightseam.traveller.WindowEnd;
import brightseam.traveller.shell.Card;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is missing before a traveller is ready, in words. */
public final class MissingWords {

    private MissingWords() {}

    /** Every part that is missing, one sentence part each. */
    static List<String> whole(Card card, Moment now) {
        return missing(card, now).stream().map(missing -> one(card, missing)).toList();
    }

    /**
     * The same for a line of a list: quarantine first; of the unsigned steps the first and how many more; window and
     * bin only once the step that opens the window is signed, because before it nobody could have them.
     */
    public static List<String> shortly(Card card, Moment now) {
        List<String> words = new ArrayList<>();
        List<Missing> all = missing(card, now);
        all.stream().filter(Missing.Quarantine.class::isInstance).forEach(stop -> words.add(one(card, stop)));
        List<Missing> unsigned = all.stream().filter(MissingWords::isUnsigned).toList();
        if (!unsigned.isEmpty()) {
            words.add(one(card, unsigned.getFirst())
                    + (unsigned.size() > 1 ? ", then " + (unsigned.size() - 1) + " more" : ""));
        }
        boolean endedBadly = card.traveller().window() instanceof Window.Ended;
        boolean cleaned = card.traveller().isSigned(card.procedure().window().openedBy());
        all.stream().filter(missing -> !isUnsigned(missing) && !(missing instanceof Missing.Quarantine))
                .filter(missing -> cleaned || missing instanceof Missing.NoWindow && endedBadly)
                .forEach(missing -> words.add(one(card, missing)));
        return List.copyOf(words);
    }

    /** Past the lock nothing is missing any more, yet suspicion can stop it there. */
    private static List<Missing> missing(Card card, Moment now) {
        Traveller traveller = card.traveller();
        return traveller.phase() != Phase.ACTIVE && traveller.isInQuarantine()
                ? List.of(new Missing.Quarantine(
                        traveller.openNonconformances().stream().map(Nonconformance::number).toList()))
                : card.missing(now);
    }

    private static boolean isUnsigned(Missing missing) {
        return missing instanceof Missing.StepNotSigned || missing instanceof Missing.NotStamped;
    }

    private static String one(Card card, Missing missing) {
        return switch (missing) {
            case Missing.StepNotSigned unsigned -> title(card, unsigned.step()) + " not signed";
            case Missing.NotStamped unstamped -> title(card, unstamped.step()) + " not stamped";
            case Missing.Quarantine stopped -> "quarantine: " + card.traveller().openNonconformances().stream()
                    .map(open -> cause(card, open)).collect(Collectors.joining("; "));
            case Missing.NoWindow none -> noWindow(card.traveller());
            case Missing.TooLittleWindow little -> "window closes " + in(little.left())
                    + ", passing in needs it open " + in(little.needed()).replaceFirst("in ", "for ");
            case Missing.NotInCleanBin bin -> "not in a " + bin.wanted().stream()
                    .map(wanted -> Wording.words(wanted.name())).collect(Collectors.joining(" or "));
            case Missing.BinOpen open -> open.bin() + " is not closed";
        };
    }

    /** What a nonconformance is about, in a few words. */
    static String cause(Card card, Nonconformance open) {
        String step = title(card, open.step());
        return switch (open.cause()) {
            case JOINT_EXCURSION -> "oxygen over its limit at a joint";
            case JOINT_UNPROVEN -> "a joint not proven";
            case JOINT_REJECTED -> "a joint rejected";
            case HOLD_OVERRUN -> step + " overrun";
            case HOLD_CUT_SHORT -> step + " cut short";
            case TIME_NOT_OBSERVED -> step + " entered late";
            case GAP_EXCEEDED -> "too long after " + step;
            case READING_OUT_OF_LIMITS -> step + ", reading out of limits";
            case INSPECTION_REJECTED -> step + " rejected: " + open.text();
            case REPORTED -> "reported at " + step + ": " + open.text();
            case SUSPECT -> "suspect: " + open.text();
        };
    }

    private static String noWindow(Traveller traveller) {
        boolean touched = traveller.window() instanceof Window.Ended ended && ended.why() == WindowEnd.TOUCHED;
        boolean runOut = traveller.window() instanceof Window.Ended ended && ended.why() == WindowEnd.RUN_OUT;
        return touched ? "touched, not clean any more" : runOut ? "clean window has run out" : "no clean window";
    }

    private static String in(Duration left) {
        return Words.distance(Instant.EPOCH.plus(left), Instant.EPOCH);
    }

    private static String title(Card card, StepId step) {
        return card.procedure().step(step).title();
    }
}
