package brightseam.ui.chamber;

import brightseam.kernel.Moment;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** The one thing that the card is about. */
sealed interface Doing {

    /**
     * The same without the words that change from second to second with what is measured. Two that are alike in this
     * are drawn once, so that no button is exchanged under a finger.
     */
    default Doing still() {
        return this;
    }

    /** What the session needs, and what of it is in. */
    record CheckIn(String ask, List<Need> needs) implements Doing {
        /** Copies the list. */
        public CheckIn {
            needs = List.copyOf(needs);
        }
    }

    /** Sentences to read before the next action. */
    record Telling(String instruction, List<String> lines) implements Doing {}

    /** The purge runs: digits, chart, forecast. */
    record Purging() implements Doing {}

    /**
     * The chamber is fit to weld, or is not.
     *
     * @param fit whether it is
     * @param whyNot every reason why not
     * @param map the picture with its joints; empty where nobody drew one
     * @param joints the joints, in the order of their numbers
     */
    record Welding(boolean fit, List<String> whyNot, Optional<MapPicture> map, List<JointLine> joints)
            implements Doing {
        @Override public Doing still() {
            return new Welding(fit, List.of(), map, joints);
        }
    }

    /**
     * The lock.
     *
     * @param doors how its doors stand
     * @param state that in words
     * @param inside what lies in it
     * @param clock how long its purge still takes, where it is purged by time
     * @param cycles how many cycles are still needed, where it is purged by cycles
     * @param effect what opening the inner door does to the chamber
     * @param ask what can be scanned now; empty where nothing can
     */
    record AtLock(Doors doors, String state, List<String> inside, Optional<Running> clock, Optional<Integer> cycles,
            List<String> effect, String ask) implements Doing {
        @Override public Doing still() {
            return new AtLock(doors, state, inside, clock, cycles, List.of(), ask);
        }
    }

    /**
     * A joint before its arc.
     *
     * @param usable whether the arc may begin now
     * @param under what stands below the switch's words
     * @param scan what has to be scanned; empty where nothing has
     */
    record ArcReady(boolean armed, boolean usable, String under, String scan) implements Doing {
        @Override public Doing still() {
            return new ArcReady(armed, usable, "", scan);
        }
    }

    /** An arc burns. */
    record ArcBurns(int run, Moment since, String limit) implements Doing {}

    /**
     * The arc is over.
     *
     * @param evidence what the readings prove, line by line
     * @param doubt what they leave in doubt; empty where nothing
     * @param cooling the time that the part still has to stay in the argon
     * @param trace the oxygen over it; empty until the readings are in
     */
    record ArcOver(List<String> evidence, Optional<String> doubt, Optional<Running> cooling, Optional<Trace> trace)
            implements Doing {}

    /**
     * The session ends: what still cools, and what the room's monitor says.
     *
     * @param cooling the joint that is hot longest
     */
    record Ending(List<String> lines, Optional<Running> cooling) implements Doing {
        @Override public Doing still() {
            return new Ending(List.of(), cooling);
        }
    }

    /** The session is over: a line each of what came of it. */
    record Over(List<Line> lines) implements Doing {}

    /** What is asked before something counts. */
    record Asking(Asked asked) implements Doing {
        @Override public Doing still() {
            return new Asking(asked.still());
        }
    }

    /** A drawing, and the same as a sentence. */
    record Trace(String svg, String words) {}

    /** A name with its value. */
    record Line(String name, String value) {}

    /** Something that runs down to zero. */
    record Running(String label, Moment since, Duration length, String atZero) {}

    /** The two doors. */
    enum Doors { BOTH_SHUT_AIR, BOTH_SHUT_ARGON, OUTER_OPEN, PURGING, INNER_OPEN }
}
