package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brightseam.purge.VesselNetwork.Flow;
import brightseam.purge.VesselNetwork.Vessel;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class VesselNetworkTest {

    private static final double AIR = RoomAir.OXYGEN_PPM;

    @Test
    void one_vessel_is_the_closed_form() {
        VesselNetwork network = new VesselNetwork(List.of(new Vessel(400, 50, 0.01)), List.of(), 2, AIR);
        MixingModel model = new MixingModel(400, 50, 2, 1, 0.01);
        for (double minutes = 0; minutes < 200; minutes += 7) {
            assertThat(network.after(minutes, AIR).ppm(0)).isCloseTo(model.ppmAfter(minutes, AIR), within(1e-7));
        }
        double needed = ((SweepPurge.Needed) model.sweep(AIR, 60)).minutes();
        assertThat(network.minutesTo(0, 60, 500, AIR)).isCloseTo(needed, within(0.002));
        assertThat(network.minutesTo(0, 20, 500, AIR)).isInfinite();
    }

    /** Two equal vessels in series, pure gas: C2 / C0 = (1 + kt) exp(-kt), as in any book on stirred tanks. */
    @Test
    void two_equal_vessels_in_series_are_the_closed_form() {
        VesselNetwork network = series(0);
        for (double minutes = 0; minutes <= 60; minutes += 5) {
            double kt = 0.2 * minutes;
            var state = network.after(minutes, AIR, AIR);
            assertThat(state.ppm(0)).isCloseTo(AIR * Math.exp(-kt), within(1e-6));
            assertThat(state.ppm(1)).isCloseTo(AIR * (1 + kt) * Math.exp(-kt), within(1e-6));
        }
        assertThat(network.ventLitresPerMinute(0)).isZero();
        assertThat(network.ventLitresPerMinute(1)).isEqualTo(20);
    }

    /** A blind cavity: after the chamber is clean, it gives off what it holds with rate exchange / volume. */
    @Test
    void a_blind_cavity_follows_its_own_slow_rate() {
        VesselNetwork network = new VesselNetwork(
                List.of(new Vessel(400, 400, 0), new Vessel(0.2, 0, 0)), Flow.exchange(0, 1, 0.01), 0, AIR);
        double early = network.after(100, AIR, AIR).ppm(1);
        double late = network.after(140, AIR, AIR).ppm(1);
        assertThat(late / early).isCloseTo(Math.exp(-0.05 * 40), within(1e-3));
        assertThat(network.minutesTo(0, 30, 300, AIR, AIR)).isLessThan(network.minutesTo(1, 30, 300, AIR, AIR));
    }

    @Test
    void exact_and_numerical_integration_agree_and_the_latter_converges_with_fourth_order() {
        Random random = new Random(4);
        for (int i = 0; i < 20; i++) {
            RandomNet net = RandomNet.random(random);
            var exact = net.network().after(10, net.start());
            double coarse = error(net, exact, 100);
            double fine = error(net, exact, 200);
            assertThat(fine).isLessThan(0.1);
            assertThat(Math.log(coarse / fine) / Math.log(2)).as("order, errors %s and %s", coarse, fine)
                    .isBetween(3.6, 4.6);
        }
    }

    @Test
    void oxygen_in_is_oxygen_out_and_oxygen_stored() {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            RandomNet net = RandomNet.random(random);
            double minutes = 100 * random.nextDouble();
            var end = net.network().after(minutes, net.start());
            double in = 0;
            double out = 0;
            double stored = 0;
            double scale = 0;
            for (int v = 0; v < net.vessels().size(); v++) {
                Vessel vessel = net.vessels().get(v);
                in += minutes * (vessel.supplyLitresPerMinute() * net.supplyPpm()
                        + vessel.leakAirLitresPerMinute() * AIR);
                out += net.network().ventLitresPerMinute(v) * end.ppmMinutes(v);
                stored += vessel.volumeLitres() * (end.ppm(v) - net.start()[v]);
                scale += vessel.volumeLitres() * net.start()[v];
            }
            assertThat(in - out - stored).isCloseTo(0, within(1e-9 * (scale + in)));
        }
    }

    @Test
    void nothing_goes_below_the_supply_or_above_air_and_leaks_and_impurity_never_help() {
        Random random = new Random(6);
        for (int i = 0; i < 200; i++) {
            RandomNet net = RandomNet.random(random);
            double minutes = 60 * random.nextDouble();
            RandomNet leakier = net.with(net.supplyPpm(), 1 + random.nextDouble());
            RandomNet impurer = net.with(net.supplyPpm() + random.nextDouble() * 20, 1);
            for (int v = 0; v < net.vessels().size(); v++) {
                double ppm = net.network().after(minutes, net.start()).ppm(v);
                assertThat(ppm).isBetween(net.supplyPpm() - 1e-6, AIR + 1e-6);
                assertThat(leakier.network().after(minutes, net.start()).ppm(v)).isGreaterThanOrEqualTo(ppm - 1e-6);
                assertThat(impurer.network().after(minutes, net.start()).ppm(v)).isGreaterThanOrEqualTo(ppm - 1e-6);
            }
        }
    }

    @Test
    void more_flow_through_a_series_is_never_later() {
        double before = Double.POSITIVE_INFINITY;
        for (double extra = 0; extra < 100; extra += 10) {
            double minutes = series(extra).minutesTo(1, 100, 200, AIR, AIR);
            assertThat(minutes).isLessThan(before);
            before = minutes;
        }
    }

    @Test
    void a_network_that_cannot_be_is_refused() {
        List<Vessel> two = List.of(new Vessel(400, 10, 0), new Vessel(40, 0, 0));
        assertThatThrownBy(() -> new VesselNetwork(two, List.of(new Flow(0, 2, 5)), 0, AIR))
                .hasMessageContaining("no such vessel");
        assertThatThrownBy(() -> new VesselNetwork(two, List.of(new Flow(0, 1, 11)), 0, AIR))
                .hasMessageContaining("more leaves vessel 0");
        assertThatThrownBy(() -> new Flow(1, 1, 5)).hasMessageContaining("one vessel to another");
        assertThatThrownBy(() -> new VesselNetwork(two, List.of(), 0, AIR).after(1, AIR))
                .hasMessageContaining("2 vessels");
    }

    private static VesselNetwork series(double extraFlow) {
        double flow = 20 + extraFlow;
        return new VesselNetwork(List.of(new Vessel(100, flow, 0), new Vessel(100, 0, 0)),
                List.of(new Flow(0, 1, flow)), 0, AIR);
    }

    private static double error(RandomNet net, VesselNetwork.State exact, int steps) {
        double[] end = RungeKutta.integrate((t, y) -> net.slope(y), net.start(), 10, steps);
        double most = 0;
        for (int v = 0; v < end.length; v++) {
            most = Math.max(most, Math.abs(end[v] - exact.ppm(v)));
        }
        return most;
    }
}
