package brightseam.ui.chamber;

import java.util.List;

/**
 * What the screen shows and what changes only when something is done. Two equal ones look the same, so that an equal
 * one need not be drawn anew.
 *
 * @param over the line beside the title
 * @param title the word that reads first
 * @param doing the one thing that the card is about
 * @param acts what can be done, the next action first
 * @param ways to other screens
 */
record ChamberCard(String over, String title, Doing doing, List<Act> acts, List<Way> ways) {

    /** Copies the lists. */
    ChamberCard {
        acts = List.copyOf(acts);
        ways = List.copyOf(ways);
    }

    /**
     * A way to another screen.
     *
     * @param main whether it is what comes next
     */
    record Way(String words, String path, boolean main) {

        /** A way beside what comes next. */
        Way(String words, String path) {
            this(words, path, false);
        }
    }

    /** The same without the words that change from second to second with what is measured. */
    ChamberCard still() {
        return new ChamberCard("", title, doing.still(), acts.stream().map(Act::still).toList(), ways);
    }

    /** The same card while {@code asked} is asked about. */
    ChamberCard asking(Asked asked) {
        return new ChamberCard(over, asked.act().confirm().map(Act.Confirm::title).orElse(title),
                new Doing.Asking(asked), List.of(), List.of());
    }
}
