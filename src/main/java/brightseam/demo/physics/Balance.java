package brightseam.demo.physics;

import java.time.Duration;
import java.util.List;

/**
 * The balance of one gas over all volumes, walls and gauges, as rates of change per minute: first the spaces in ppm,
 * then the walls of chamber and lock in ppm times litres, then what each gauge shows in ppm.
 */
final class Balance {

    static final int SPACES = Space.values().length;
    static final int CHAMBER_WALL = SPACES;
    static final int LOCK_WALL = SPACES + 1;
    static final int FIRST_TAP = SPACES + 2;

    private static final double MILLIS_PER_MINUTE = 60_000;

    private final ChamberBody body;
    private final double[][] a;
    private final double[] b;

    private Balance(ChamberBody body, int size) {
        this.body = body;
        this.a = new double[size][size];
        this.b = new double[size];
    }

    /** The step over {@code minutes} under {@code now} of {@code gas}, with gauges at {@code taps}. */
    static Propagator step(ChamberBody body, List<Tap> taps, Gas gas, Conditions now, double minutes) {
        Balance balance = new Balance(body, FIRST_TAP + taps.size());
        balance.argon(Space.CHAMBER, now.purgeLitresPerMinute(), now.argonPpm(gas));
        balance.argon(Space.LOCK, now.lockLitresPerMinute(), now.argonPpm(gas));
        balance.air(now);
        balance.doors(now);
        if (gas == Gas.MOISTURE) {
            balance.wall(CHAMBER_WALL, Space.CHAMBER, body.wallPpmLitres(), now.open());
            balance.wall(LOCK_WALL, Space.LOCK, body.lockWallPpmLitres(), now.outerOpen());
        }
        if (now.arc()) {
            balance.source(Space.CHAMBER, gas == Gas.OXYGEN ? body.arcOxygen() : body.arcMoisture());
        }
        balance.inflow(Space.ROOM, now.ventilationLitresPerMinute(), gas.outdoorsPpm());
        balance.taps(taps, gas);
        return Propagator.of(balance.a, balance.b, minutes);
    }

    /** What mixes pushes mixed gas out into the room; the rest goes into the room as it came. */
    private void argon(Space into, double litresPerMinute, double argonPpm) {
        double mixed = body.mixing() * litresPerMinute;
        inflow(into, mixed, argonPpm);
        flow(into, Space.ROOM, mixed);
        inflow(Space.ROOM, litresPerMinute - mixed, argonPpm);
    }

    private void air(Conditions now) {
        flow(Space.ROOM, Space.CHAMBER, now.leakLitresPerMinute());
        flow(Space.CHAMBER, Space.ROOM, now.leakLitresPerMinute());
        flow(Space.ROOM, Space.LOCK, now.lockLeakLitresPerMinute());
        flow(Space.LOCK, Space.ROOM, now.lockLeakLitresPerMinute());
    }

    private void doors(Conditions now) {
        exchange(Space.CHAMBER, Space.SLEEVES, body.sleeveLitresPerMinute());
        exchange(Space.CHAMBER, Space.LOCK, now.innerOpen() ? body.innerDoorLitresPerMinute() : 0);
        exchange(Space.LOCK, Space.ROOM, now.outerOpen() ? body.outerDoorLitresPerMinute() : 0);
        exchange(Space.CHAMBER, Space.ROOM, now.open() ? body.frontLitresPerMinute() : 0);
    }

    private void exchange(Space one, Space other, double litresPerMinute) {
        flow(one, other, litresPerMinute);
        flow(other, one, litresPerMinute);
    }

    private void flow(Space from, Space into, double litresPerMinute) {
        double rate = litresPerMinute / body.litres(into);
        a[into.ordinal()][from.ordinal()] += rate;
        a[into.ordinal()][into.ordinal()] -= rate;
    }

    private void inflow(Space into, double litresPerMinute, double ppm) {
        double rate = litresPerMinute / body.litres(into);
        a[into.ordinal()][into.ordinal()] -= rate;
        b[into.ordinal()] += rate * ppm;
    }

    private void source(Space into, double ppmLitresPerMinute) {
        b[into.ordinal()] += ppmLitresPerMinute / body.litres(into);
    }

    /** A wall gives off what it holds; while room air stands before it, it is filled up again. */
    private void wall(int wall, Space space, double fullPpmLitres, boolean inAir) {
        double drying = 1 / minutes(body.dryingTime());
        a[wall][wall] -= drying;
        a[space.ordinal()][wall] += drying / body.litres(space);
        if (inAir) {
            double wetting = 1 / minutes(body.wettingTime());
            a[wall][wall] -= wetting;
            b[wall] += (wetting + drying) * fullPpmLitres;
        }
    }

    private void taps(List<Tap> taps, Gas gas) {
        for (int i = 0; i < taps.size(); i++) {
            Tap tap = taps.get(i);
            if (tap.gas() == gas && !tap.lag().isZero()) {
                double rate = 1 / minutes(tap.lag());
                a[FIRST_TAP + i][tap.space().ordinal()] += rate;
                a[FIRST_TAP + i][FIRST_TAP + i] -= rate;
            }
        }
    }

    private static double minutes(Duration duration) {
        return duration.toMillis() / MILLIS_PER_MINUTE;
    }
}
