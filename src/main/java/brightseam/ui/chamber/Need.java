package brightseam.ui.chamber;

import java.util.List;

/**
 * One line of what the session needs.
 *
 * @param title what is needed, in words
 * @param detail how many are in, which, or why it may stay out
 * @param standing where it stands
 * @param acts what can be done about it
 */
record Need(String title, String detail, Standing standing, List<Act> acts) {

    /** Copies the list. */
    Need {
        acts = List.copyOf(acts);
    }

    /** Where it stands. */
    enum Standing {
        /** Checked in. */
        IN("in"),
        /** Not yet. */
        MISSING("missing"),
        /** The lead lets it stay out. */
        LEFT_OUT("left out");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }
}
