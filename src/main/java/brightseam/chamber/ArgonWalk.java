package brightseam.chamber;

import brightseam.kernel.SupplyId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Walks through time with the sources, drawing from one at a time while the other dewars boil off. */
final class ArgonWalk {

    private static final double NANOS_PER_HOUR = 3.6e12;
    /** Less than this is nothing: a thousandth of a litre. */
    private static final double NOTHING = 1e-3;

    private final List<ArgonLeft> sources;
    private final double[] usable;
    private Instant at;
    private Optional<Instant> changeOverAt = Optional.empty();
    private Optional<Instant> runsOutAt = Optional.empty();
    private List<ArgonForecast.ChangeOver> changeOvers = new ArrayList<>();
    private double lacking;
    private Optional<SupplyId> drawn = Optional.empty();

    ArgonWalk(List<ArgonLeft> sources, Instant start) {
        this.sources = sources.stream().sorted(Comparator.comparing(one -> !one.connected())).toList();
        this.usable = this.sources.stream().mapToDouble(ArgonLeft::usableStandardLitres).toArray();
        this.at = start;
    }

    ArgonForecast through(List<ArgonDemand> demands) {
        List<ArgonForecast.Line> lines = new ArrayList<>();
        for (ArgonDemand demand : demands.stream().sorted(Comparator.comparing(ArgonDemand::startsAt)).toList()) {
            lines.add(line(demand));
        }
        return new ArgonForecast(lines, left(), changeOverAt, runsOutAt);
    }

    /** How many hours all sources last at a steady flow. */
    double hoursAt(double litresPerHour) {
        double hours = 0;
        for (int i = next(); i >= 0; i = next()) {
            double more = usable[i] / rate(i, litresPerHour);
            pass(more, i, litresPerHour);
            hours += more;
        }
        return hours;
    }

    private ArgonForecast.Line line(ArgonDemand demand) {
        if (demand.startsAt().isAfter(at)) {
            pass(hours(Duration.between(at, demand.startsAt())), -1, 0);
            at = demand.startsAt();
        }
        Instant from = at;
        changeOvers = new ArrayList<>();
        lacking = 0;
        ArgonNeed.Needed need = demand.need();
        draw(need.purge(), need.purgeStandardLitres());
        draw(need.fit(), need.holdStandardLitres() + need.lockStandardLitres());
        return new ArgonForecast.Line(demand, from, at, changeOvers, left(), lacking);
    }

    /** Draws {@code litres} evenly over {@code time}; what is not there is lacking. */
    private void draw(Duration time, double litres) {
        double hours = hours(time);
        if (hours <= 0 || litres <= 0) {
            at = at.plus(time);
            return;
        }
        double perHour = litres / hours;
        double open = hours;
        while (open * perHour > NOTHING) {
            int i = next();
            if (i < 0) {
                runsOutAt = runsOutAt.or(() -> Optional.of(at));
                lacking += open * perHour;
                at = at.plus(duration(open));
                return;
            }
            announce(i);
            double step = Math.min(open, usable[i] / rate(i, perHour));
            pass(step, i, perHour);
            at = at.plus(duration(step));
            open -= step;
        }
        noteEnd();
    }

    /** A source that stands by is connected by hand; one that is connected follows by itself. */
    private void announce(int i) {
        boolean byHand = !sources.get(i).connected();
        if (byHand && drawn.filter(sources.get(i).supply()::equals).isEmpty()) {
            changeOvers.add(new ArgonForecast.ChangeOver(at, sources.get(i).supply()));
            changeOverAt = changeOverAt.or(() -> Optional.of(at));
        }
        drawn = Optional.of(sources.get(i).supply());
    }

    private void noteEnd() {
        boolean connectedLeft = false;
        for (int i = 0; i < usable.length; i++) {
            connectedLeft |= sources.get(i).connected() && usable[i] > NOTHING;
        }
        if (!connectedLeft) {
            changeOverAt = changeOverAt.or(() -> Optional.of(at));
        }
    }

    /** The source that is drawn now; below zero where all are at their rest. */
    private int next() {
        for (int i = 0; i < usable.length; i++) {
            if (usable[i] > NOTHING) {
                return i;
            }
        }
        return -1;
    }

    /** Lets {@code hours} pass while {@code from} is drawn; every other dewar boils off. */
    private void pass(double hours, int from, double perHour) {
        for (int i = 0; i < usable.length; i++) {
            double lost = i == from ? rate(i, perHour) * hours
                    : sources.get(i).boilOffStandardLitresPerHour() * hours;
            usable[i] = Math.max(0, usable[i] - lost);
        }
    }

    private double rate(int i, double perHour) {
        return Math.max(perHour, sources.get(i).boilOffStandardLitresPerHour());
    }

    private double left() {
        double all = 0;
        for (double one : usable) {
            all += one;
        }
        return all;
    }

    private static double hours(Duration time) {
        return time.toNanos() / NANOS_PER_HOUR;
    }

    private static Duration duration(double hours) {
        return Duration.ofNanos(Math.round(hours * NANOS_PER_HOUR));
    }
}
