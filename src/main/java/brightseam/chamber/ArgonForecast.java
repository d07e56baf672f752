package brightseam.chamber;

import brightseam.kernel.SupplyId;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How the argon goes, session by session.
 *
 * <p>Sessions are taken in order of their beginning and one after the other. Connected sources are drawn first, in
 * their order, then those that stand by; each is drawn down to its rest. A dewar loses its boil-off while nothing is
 * drawn from it; what is drawn comes out of the same boiling.
 *
 * @param lines one for each session, in order
 * @param leftStandardLitres what can be drawn once all sessions are over
 * @param changeOverAt when the connected sources are at their rest; empty where they outlast the sessions
 * @param runsOutAt when there is nothing left to change over to; empty where everything lasts
 */
public record ArgonForecast(
        List<Line> lines, double leftStandardLitres, Optional<Instant> changeOverAt, Optional<Instant> runsOutAt) {

    /**
     * One session.
     *
     * @param demand what it asks for
     * @param from when it begins to draw, no sooner than the one before it is over
     * @param to when it is over
     * @param changeOvers when sources run to their rest during it, and what is to be connected then
     * @param leftStandardLitres what can be drawn afterwards, over all sources
     * @param shortStandardLitres what it lacks; zero where it can be finished
     */
    public record Line(ArgonDemand demand, Instant from, Instant to, List<ChangeOver> changeOvers,
            double leftStandardLitres, double shortStandardLitres) {

        /** Copies the list. */
        public Line {
            changeOvers = List.copyOf(changeOvers);
        }

        /** Whether it can be finished. */
        public boolean isEnough() {
            return shortStandardLitres <= 0;
        }
    }

    /** A source that stands by has to be connected at that moment. */
    public record ChangeOver(Instant at, SupplyId next) {}

    /** Copies the list. */
    public ArgonForecast {
        lines = List.copyOf(lines);
    }

    /**
     * The forecast from {@code now} on.
     *
     * @param sources those connected in the order in which they are drawn, and those that stand by
     * @param demands in any order
     */
    public static ArgonForecast of(List<ArgonLeft> sources, List<ArgonDemand> demands, Instant now) {
        return new ArgonWalk(sources, now).through(demands);
    }

    /** How many of the sessions can be finished, counted until the first that cannot. */
    public int sessionsLeft() {
        int count = 0;
        while (count < lines.size() && lines.get(count).isEnough()) {
            count++;
        }
        return count;
    }

    /** How long {@code sources} last at a flow of {@code standardLitresPerHour} from now on, drawn without a pause. */
    public static Duration lasts(List<ArgonLeft> sources, double standardLitresPerHour) {
        double hours = new ArgonWalk(sources, Instant.EPOCH).hoursAt(standardLitresPerHour);
        return Duration.ofMillis(Math.round(hours * 3_600_000));
    }
}
