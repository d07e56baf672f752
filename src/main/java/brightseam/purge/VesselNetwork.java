package brightseam.purge;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Vessels that gas passes between: chamber, lock, glove ports, blind cavities; each well mixed, at one pressure.
 *
 * <p>For each vessel V_i dC_i/dt = S_i Cin + L_i Cair + sum_j F_ji C_j - (all that leaves i) C_i, where what comes in
 * and does not pass on to another vessel leaves through the vent. The equations are linear with constant coefficients,
 * so they are solved exactly, by the matrix exponential (scaling and squaring of its Taylor series), however stiff a
 * small cavity makes them.
 */
public final class VesselNetwork {

    private final List<Vessel> vessels;
    private final List<Flow> flows;
    private final double supplyPpm;
    private final double airPpm;

    /**
     * One vessel.
     *
     * @param volumeLitres of gas in it
     * @param supplyLitresPerMinute of supply gas let into it
     * @param leakAirLitresPerMinute of air that leaks into it
     */
    public record Vessel(double volumeLitres, double supplyLitresPerMinute, double leakAirLitresPerMinute) {
        /** Refuses no volume and flows below zero. */
        public Vessel {
            Quantity.positive("volume in L", volumeLitres, 1e6);
            Quantity.notNegative("supply in L/min", supplyLitresPerMinute, 1e6);
            Quantity.notNegative("leak in L/min of air", leakAirLitresPerMinute, 1e6);
        }
    }

    /** Gas that passes from one vessel, counted from 0, to another. */
    public record Flow(int from, int to, double litresPerMinute) {
        /** Refuses flows below zero and from a vessel to itself. */
        public Flow {
            Quantity.notNegative("flow in L/min", litresPerMinute, 1e6);
            if (from == to) {
                throw new IllegalArgumentException("from one vessel to another, not from " + from + " to itself");
            }
        }

        /** Both ways between two vessels, as through an opening without a draught: a blind tube, a glove port. */
        public static List<Flow> exchange(int one, int other, double litresPerMinute) {
            return List.of(new Flow(one, other, litresPerMinute), new Flow(other, one, litresPerMinute));
        }
    }

    /** All vessels at one time. */
    public static final class State {
        private final double[] ppm;
        private final double[] ppmMinutes;

        private State(double[] ppm, double[] ppmMinutes) {
            this.ppm = ppm;
            this.ppmMinutes = ppmMinutes;
        }

        /** The ppm in {@code vessel}. */
        public double ppm(int vessel) {
            return ppm[vessel];
        }

        /** The integral of the ppm in {@code vessel} over the time that has passed, in ppm times minutes. */
        public double ppmMinutes(int vessel) {
            return ppmMinutes[vessel];
        }
    }

    /**
     * Vessels and what passes between them.
     *
     * @param flows as many as there are passages; their order says nothing
     * @throws IllegalArgumentException where a flow names no vessel, or more leaves a vessel than comes in
     */
    public VesselNetwork(List<Vessel> vessels, List<Flow> flows, double supplyPpm, double airPpm) {
        this.vessels = List.copyOf(vessels);
        this.flows = List.copyOf(flows);
        this.supplyPpm = Quantity.between("supply in ppm", supplyPpm, 0, 1e6);
        this.airPpm = Quantity.between("air in ppm", airPpm, 0, 1e6);
        if (vessels.isEmpty()) {
            throw new IllegalArgumentException("a network of at least one vessel");
        }
        for (Flow flow : flows) {
            if (Math.min(flow.from(), flow.to()) < 0 || Math.max(flow.from(), flow.to()) >= vessels.size()) {
                throw new IllegalArgumentException("no such vessel: " + flow);
            }
        }
        for (int i = 0; i < vessels.size(); i++) {
            if (ventLitresPerMinute(i) < -1e-9 * (1 + comingIn(i))) {
                throw new IllegalArgumentException("more leaves vessel " + i + " than comes in: "
                        + -ventLitresPerMinute(i) + " L/min");
            }
        }
    }

    /** What leaves {@code vessel} to the room: what comes in and does not pass on. */
    public double ventLitresPerMinute(int vessel) {
        return comingIn(vessel) - passed(Flow::from, vessel);
    }

    /** All supply gas, in L/min. */
    public double supplyLitresPerMinute() {
        return vessels.stream().mapToDouble(Vessel::supplyLitresPerMinute).sum();
    }

    /**
     * All vessels after {@code minutes}.
     *
     * @param startPpm one number for each vessel
     */
    public State after(double minutes, double... startPpm) {
        Quantity.notNegative("time in min", minutes, 1e9);
        int count = vessels.size();
        double[] start = Arrays.copyOf(checked(startPpm), 2 * count + 1);
        start[2 * count] = 1;
        double[] end = Matrix.times(Matrix.exponential(system(), minutes), start);
        return new State(Arrays.copyOf(end, count), Arrays.copyOfRange(end, count, 2 * count));
    }

    /**
     * How long until {@code vessel} is at or below {@code limitPpm} for the first time, to a thousandth of a minute.
     *
     * <p>Found in steps of a five-hundredth of {@code minutesMax}, then by bisection; a shorter dip is not seen.
     *
     * @return infinite where that takes longer than {@code minutesMax}
     */
    public double minutesTo(int vessel, double limitPpm, double minutesMax, double... startPpm) {
        double[] state = checked(startPpm).clone();
        double step = Quantity.positive("longest time in min", minutesMax, 1e6) / 500;
        for (double at = 0; at <= minutesMax; at += step) {
            if (state[vessel] <= limitPpm) {
                return 0;
            }
            double[] next = after(step, state).ppm;
            if (next[vessel] <= limitPpm) {
                return at + crossing(vessel, limitPpm, step, state);
            }
            state = next;
        }
        return Double.POSITIVE_INFINITY;
    }

    private double crossing(int vessel, double limitPpm, double step, double[] state) {
        double before = 0;
        double after = step;
        while (after - before > 1e-3) {
            double middle = (before + after) / 2;
            if (after(middle, state).ppm(vessel) > limitPpm) {
                before = middle;
            } else {
                after = middle;
            }
        }
        return after;
    }

    /** d/dt of (ppm, integral of ppm, 1): constant inflow and integrals are part of one linear system. */
    private double[][] system() {
        int count = vessels.size();
        double[][] system = new double[2 * count + 1][2 * count + 1];
        for (int i = 0; i < count; i++) {
            Vessel vessel = vessels.get(i);
            system[i][i] = -comingIn(i) / vessel.volumeLitres();
            system[i][2 * count] = (vessel.supplyLitresPerMinute() * supplyPpm
                    + vessel.leakAirLitresPerMinute() * airPpm) / vessel.volumeLitres();
            system[count + i][i] = 1;
        }
        for (Flow flow : flows) {
            system[flow.to()][flow.from()] += flow.litresPerMinute() / vessels.get(flow.to()).volumeLitres();
        }
        return system;
    }

    private double comingIn(int vessel) {
        return vessels.get(vessel).supplyLitresPerMinute() + vessels.get(vessel).leakAirLitresPerMinute()
                + passed(Flow::to, vessel);
    }

    private double passed(ToIntFunction<Flow> end, int vessel) {
        return flows.stream().filter(flow -> end.applyAsInt(flow) == vessel).mapToDouble(Flow::litresPerMinute).sum();
    }

    private double[] checked(double[] startPpm) {
        if (startPpm.length != vessels.size()) {
            throw new IllegalArgumentException(vessels.size() + " vessels, not " + startPpm.length);
        }
        for (double ppm : startPpm) {
            Quantity.between("start in ppm", ppm, -1e-6, 1e6);
        }
        return startPpm;
    }
}
