package brightseam.ui.chamber;

/**
 * One number at the head of the screen.
 *
 * @param name what it is, such as {@code Oxygen}
 * @param value the number, or a word where there is none
 * @param unit its unit, empty for a word
 * @param limit its limit in words, such as {@code limit 40 ppm}; empty where there is none
 * @param state how it stands
 * @param word the state in a word or two
 */
record Gauge(String name, String value, String unit, String limit, State state, String word) {

    /** How a number stands to its limit. */
    enum State {
        /** Inside. */
        IN_ORDER,
        /** Outside, and it should not be. */
        ABOVE,
        /** Outside, and on its way inside. */
        NOT_YET,
        /** Nobody knows: the meter is silent or not to be relied on. */
        UNKNOWN,
        /** There is no limit to stand to. */
        PLAIN
    }

    /** The number with its unit. */
    String quantity() {
        return unit.isEmpty() ? value : value + "\u00a0" + unit;
    }
}
