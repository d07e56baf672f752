package brightseam.ui.chamber;

/** What of a drawn card is told anew without drawing it. */
interface Living {

    /** Nothing lives. */
    Living STILL = (now, live) -> { };

    /** Shows {@code now}, alike to what was drawn but for words that change with what is measured, and {@code live}. */
    void tell(Doing now, Live live);
}
