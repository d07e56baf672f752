package brightseam.ui.chamber;

import brightseam.procedure.Vocabulary.Caution;
import java.util.List;
import java.util.Optional;

/**
 * Something that can be done with a touch, and what is asked before it counts.
 *
 * @param kind what is done
 * @param subject to what, such as the key of a line or a label; empty where that is clear
 * @param words what the button says
 * @param main whether it is the card's one next action
 * @param held why it cannot be done now, shown below the button; empty where it can
 * @param confirm what is asked before it counts; empty where one touch is enough
 */
record Act(Kind kind, String subject, String words, boolean main, Optional<String> held, Optional<Confirm> confirm) {

    /** What can be done. */
    enum Kind {
        OPEN_SESSION, LEAVE_OUT, TAKE_BACK, CLOSE_CHAMBER, ABANDON, START_PURGE, STOP_PURGE, END_SESSION,
        STAY_SHUT, OPEN_CHAMBER, SIGN_WELDS, OPEN_OUTER, SHUT_OUTER, PURGE_LOCK, NOTE_CYCLE, OPEN_INNER, SHUT_INNER,
        CONFIRM_BACK_SIDE, ARM, TACK_FIRST, WELD_NEXT, REPAIR_NEXT
    }

    /**
     * What is asked before it counts, in this order: what to check, a reason, labels to scan, the PIN.
     *
     * @param title the card's head meanwhile
     * @param lines what it means
     * @param cautions what can hurt; each is read and confirmed first
     * @param reasons reasons to choose from; empty where none is asked for
     * @param scan what is to be scanned; empty where nothing is
     * @param sign what the PIN is for; empty where none is asked for
     */
    record Confirm(String title, List<String> lines, List<Caution> cautions, List<String> reasons,
            Optional<String> scan, Optional<String> sign) {
        /** Copies the lists. */
        Confirm {
            lines = List.copyOf(lines);
            cautions = List.copyOf(cautions);
            reasons = List.copyOf(reasons);
        }

        /** The same without the words that change with what is measured. */
        Confirm still() {
            return new Confirm(title, List.of(), cautions, reasons, scan, sign);
        }
    }

    /** The card's next action, done with one touch. */
    static Act main(Kind kind, String words) {
        return new Act(kind, "", words, true, Optional.empty(), Optional.empty());
    }

    /** Another action, done with one touch. */
    static Act other(Kind kind, String words) {
        return new Act(kind, "", words, false, Optional.empty(), Optional.empty());
    }

    /** The same, done to {@code thing}. */
    Act to(String thing) {
        return new Act(kind, thing, words, main, held, confirm);
    }

    /** The same, which cannot be done for {@code why}. */
    Act held(Optional<String> why) {
        return new Act(kind, subject, words, main, why, confirm);
    }

    /** The same without the words of why it cannot be done now, which change with what is measured. */
    Act still() {
        return new Act(kind, subject, words, main, held.map(why -> ""), confirm.map(Confirm::still));
    }

    /** The same, which asks {@code first}. */
    Act asking(Confirm first) {
        return new Act(kind, subject, words, main, held, Optional.of(first));
    }
}
