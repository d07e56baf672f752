package brightseam.kernel.shell;

import brightseam.kernel.Moment;

/** The one clock. Services read it; cores are told the time. */
public interface ShopClock {

    /** Now, as wall time and on the shop's elapsed time line, which never runs backwards, across restarts too. */
    Moment now();

    /** How many shop seconds pass in one real second: 1, or more on a demo clock. */
    double speed();

    /** Whether this is a demo clock. Everything recorded under it is marked. */
    boolean isDemo();
}
