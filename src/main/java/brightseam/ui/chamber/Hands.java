package brightseam.ui.chamber;

/** Carries out what is touched on a card. */
interface Hands {

    /** Somebody touched an action. */
    void touches(Act act);

    /** The cautions are read. */
    void confirms();

    /** A reason is chosen or typed. */
    void because(String reason);

    /** The reason is to be typed. */
    void types();

    /** A PIN was entered. */
    void signs(String pin);

    /** Nothing is to be done after all. */
    void goesBack();

    /** Another screen is wanted. */
    void goes(String path);

    /**
     * The arc switch was pressed.
     *
     * @param start whether an arc is to begin; else the one that runs is to end
     * @param run the number of the arc that the page showed
     * @param atElapsedMillis when it was pressed, as the page says
     */
    void arc(boolean start, int run, long atElapsedMillis);
}
