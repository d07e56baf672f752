package brightseam.purge;

import brightseam.purge.VesselNetwork.Flow;
import brightseam.purge.VesselNetwork.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A chamber that is purged, a lock, and small places that only exchange with the chamber. */
record RandomNet(List<Vessel> vessels, List<Flow> flows, double supplyPpm, double[] start) {

    static RandomNet random(Random random) {
        List<Vessel> vessels = new ArrayList<>();
        List<Flow> flows = new ArrayList<>();
        vessels.add(new Vessel(200 + 400 * random.nextDouble(), 100 * random.nextDouble() + 20, 0.01));
        vessels.add(new Vessel(40 + 40 * random.nextDouble(), 10 * random.nextDouble(), random.nextDouble() / 50));
        flows.add(new Flow(0, 1, 15 * random.nextDouble()));
        for (int i = 2; i < 2 + random.nextInt(3); i++) {
            vessels.add(new Vessel(2 + 5 * random.nextDouble(), 0, 0));
            flows.addAll(Flow.exchange(0, i, 2 * random.nextDouble()));
        }
        double[] start = new double[vessels.size()];
        for (int i = 0; i < start.length; i++) {
            start[i] = RoomAir.OXYGEN_PPM * (0.2 + 0.8 * random.nextDouble());
        }
        return new RandomNet(vessels, flows, 5 * random.nextDouble(), start);
    }

    RandomNet with(double otherSupplyPpm, double leakTimes) {
        return new RandomNet(vessels.stream().map(vessel -> new Vessel(vessel.volumeLitres(),
                vessel.supplyLitresPerMinute(), vessel.leakAirLitresPerMinute() * leakTimes)).toList(),
                flows, otherSupplyPpm, start);
    }

    VesselNetwork network() {
        return new VesselNetwork(vessels, flows, supplyPpm, RoomAir.OXYGEN_PPM);
    }

    /** Written from the balance of each vessel, without the matrix of the main code. */
    double[] slope(double[] ppm) {
        double[] slope = new double[ppm.length];
        for (int v = 0; v < ppm.length; v++) {
            Vessel vessel = vessels.get(v);
            double in = vessel.supplyLitresPerMinute() * supplyPpm
                    + vessel.leakAirLitresPerMinute() * RoomAir.OXYGEN_PPM;
            double leaving = vessel.supplyLitresPerMinute() + vessel.leakAirLitresPerMinute();
            for (Flow flow : flows) {
                if (flow.to() == v) {
                    in += flow.litresPerMinute() * ppm[flow.from()];
                    leaving += flow.litresPerMinute();
                }
            }
            slope[v] = (in - leaving * ppm[v]) / vessel.volumeLitres();
        }
        return slope;
    }
}
