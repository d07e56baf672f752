package brightseam.demo.physics;

import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A chamber, its lock, its sleeves and its room as well-mixed volumes that argon flushes, air leaks into, damp walls
 * give water to and arcs drive gas out in; with gauges that follow late. Every step is carried out exactly for its
 * length, so a long skip in one step and the same time in many steps come to the same. Not safe for several threads.
 */
public final class ChamberPhysics {

    private static final double MILLIS_PER_MINUTE = 60_000;
    private static final int REMEMBERED_MAX = 64;

    private final ChamberBody body;
    private final List<Tap> taps;
    private final Map<Gas, double[]> states = new EnumMap<>(Gas.class);
    private final Map<Leg, Propagator> remembered = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Leg, Propagator> eldest) {
            return size() > REMEMBERED_MAX;
        }
    };

    /** One kind of step; the same kind comes again and again. */
    private record Leg(Gas gas, Conditions conditions, long millis) {}

    /** Everything full of air, walls wet; gauges at {@code taps} show what is there. */
    public ChamberPhysics(ChamberBody body, List<Tap> taps) {
        this.body = body;
        this.taps = List.copyOf(taps);
        for (Gas gas : Gas.values()) {
            double[] state = new double[Balance.FIRST_TAP + taps.size()];
            Arrays.fill(state, gas.outdoorsPpm());
            state[Balance.CHAMBER_WALL] = gas == Gas.MOISTURE ? body.wallPpmLitres() : 0;
            state[Balance.LOCK_WALL] = gas == Gas.MOISTURE ? body.lockWallPpmLitres() : 0;
            states.put(gas, state);
        }
    }

    /** Lets {@code duration} pass under {@code now}. */
    public void advance(Conditions now, Duration duration) {
        if (duration.isNegative()) {
            throw new IllegalArgumentException("time runs forward only");
        }
        if (duration.isZero()) {
            return;
        }
        for (Gas gas : Gas.values()) {
            Propagator step = remembered.computeIfAbsent(new Leg(gas, now, duration.toMillis()), leg ->
                    Balance.step(body, taps, gas, now, leg.millis() / MILLIS_PER_MINUTE));
            states.put(gas, step.after(states.get(gas)));
        }
    }

    /** How much {@code gas} there is in {@code space} in truth, in ppm by volume. */
    public double ppm(Gas gas, Space space) {
        return states.get(gas)[space.ordinal()];
    }

    /** What a gauge at the {@code tap}-th place would show without noise, in ppm by volume. */
    public double followed(int tap) {
        Tap place = taps.get(tap);
        return place.lag().isZero() ? ppm(place.gas(), place.space())
                : states.get(place.gas())[Balance.FIRST_TAP + tap];
    }

    /** From now on {@code space} holds {@code ppm} of {@code gas}, and the gauges there have followed. */
    public void put(Gas gas, Space space, double ppm) {
        double[] state = states.get(gas);
        state[space.ordinal()] = ppm;
        for (int i = 0; i < taps.size(); i++) {
            if (taps.get(i).gas() == gas && taps.get(i).space() == space) {
                state[Balance.FIRST_TAP + i] = ppm;
            }
        }
    }

    /** From now on the walls of chamber and lock hold {@code share} (0 dry to 1 wet) of the water that they can. */
    public void wet(double share) {
        double[] state = states.get(Gas.MOISTURE);
        state[Balance.CHAMBER_WALL] = share * body.wallPpmLitres();
        state[Balance.LOCK_WALL] = share * body.lockWallPpmLitres();
    }

    /** A puff: {@code litres} of room air take the place of as much of what is in the chamber. */
    public void puff(double litres) {
        double share = Math.min(1, Math.max(0, litres) / body.chamberLitres());
        for (Gas gas : Gas.values()) {
            double[] state = states.get(gas);
            int chamber = Space.CHAMBER.ordinal();
            state[chamber] += share * (state[Space.ROOM.ordinal()] - state[chamber]);
        }
    }
}
