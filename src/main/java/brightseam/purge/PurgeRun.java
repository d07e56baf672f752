package brightseam.purge;

import java.util.Comparator;
import java.util.List;

/**
 * What is known of a purge while its curve is measured: the chamber, the supply, and the flow as it was set.
 *
 * @param volumeLitres of gas in the chamber
 * @param flows from when on which flow; the first also holds before its time, the last goes on
 * @param supplyPpm of the measured substance in the supply, as its certificate says
 * @param airPpm of it in the room's air
 */
public record PurgeRun(double volumeLitres, List<FlowStep> flows, double supplyPpm, double airPpm) {

    /** The flow from {@code fromSeconds} on, in litres a minute at the chamber's pressure and temperature. */
    public record FlowStep(double fromSeconds, double litresPerMinute) {
        /** Refuses flows below zero. */
        public FlowStep {
            Quantity.between("time in s", fromSeconds, -1e12, 1e12);
            Quantity.notNegative("flow in L/min", litresPerMinute, 1e6);
        }
    }

    /** Refuses no volume, no flow at all, and ppm outside 0 to a million; puts the flows in order. */
    public PurgeRun {
        Quantity.positive("volume in L", volumeLitres, 1e6);
        Quantity.between("supply in ppm", supplyPpm, 0, 1e6);
        Quantity.positive("air in ppm", airPpm, 1e6);
        flows = flows.stream().sorted(Comparator.comparingDouble(FlowStep::fromSeconds)).toList();
        if (flows.isEmpty()) {
            throw new IllegalArgumentException("a purge has a flow, if only of zero");
        }
    }

    /** Oxygen at one steady flow. */
    public static PurgeRun steady(double volumeLitres, double litresPerMinute, double supplyPpm) {
        return new PurgeRun(volumeLitres, List.of(new FlowStep(0, litresPerMinute)), supplyPpm, RoomAir.OXYGEN_PPM);
    }

    /** The flow at a time. */
    public double flowLitresPerMinute(double seconds) {
        double flow = flows.getFirst().litresPerMinute();
        for (FlowStep step : flows) {
            if (step.fromSeconds() <= seconds) {
                flow = step.litresPerMinute();
            }
        }
        return flow;
    }

    double flowMost() {
        return flows.stream().mapToDouble(FlowStep::litresPerMinute).max().orElseThrow();
    }
}
