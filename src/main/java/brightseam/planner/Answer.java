package brightseam.planner;

/** What came of planning. */
public sealed interface Answer {

    /** A plan that the checker found no fault with. */
    record Planned(Plan plan, Quality quality) implements Answer {}

    /** No plan can be: these demands stand against one another. */
    record Impossible(Conflict conflict) implements Answer {}

    /** Neither a plan nor a proof that there is none was found in the time given. */
    record Undecided(long millis) implements Answer {}
}
