package brightseam.purge;

import java.util.EnumSet;
import java.util.Set;

/** Whether flowing through brings a vessel to a limit, and what that takes. */
public sealed interface SweepPurge {

    /**
     * It does.
     *
     * @param minutes from now; zero where the limit holds already
     * @param volumes how many times the vessel's own volume is let in
     * @param gasLitres let in, at the vessel's pressure and temperature
     */
    record Needed(double minutes, double volumes, double gasLitres) implements SweepPurge {

        /** The same gas in standard litres of argon; see {@link StandardLitres}. */
        public double argonStandardLitres(double pressureBarAbsolute, double temperatureCelsius) {
            return StandardLitres.of(gasLitres, pressureBarAbsolute, temperatureCelsius);
        }
    }

    /**
     * It never does.
     *
     * @param limitPpm what was asked for
     * @param levelPpm where the vessel goes instead; where it is now if nothing flows
     * @param against what stands against it, each by itself enough
     */
    record Impossible(double limitPpm, double levelPpm, Set<Obstacle> against) implements SweepPurge {
        /** Keeps its own copy of {@code against}. */
        public Impossible {
            against = Set.copyOf(against);
        }
    }

    /** What keeps a vessel above a limit. */
    enum Obstacle {
        /** The supply gas itself has as many ppm as the limit, or more. */
        SUPPLY,
        /** The air that leaks in keeps the level at or above the limit, though the supply is better than it. */
        LEAK,
        /** Nothing flows. */
        NO_FLOW
    }

    /**
     * Time and gas for {@code model} from {@code startPpm} to {@code limitPpm}.
     *
     * <p>t = ln[(C0 - level) / (Cf - level)] / k, with level and rate k of {@link MixingModel}. A limit at the level is
     * never reached, only approached. A vessel below the limit now that would rise above it is {@code Impossible} too.
     */
    static SweepPurge to(MixingModel model, double startPpm, double limitPpm) {
        Quantity.between("start in ppm", startPpm, 0, 1e6);
        Quantity.between("limit in ppm", limitPpm, 0, 1e6);
        Set<Obstacle> against = against(model, limitPpm);
        if (!against.isEmpty() && (startPpm > limitPpm || !staysBelow(model, limitPpm))) {
            return new Impossible(limitPpm, model.ratePerMinute() == 0 ? startPpm : model.levelPpm(), against);
        }
        double level = model.levelPpm();
        double minutes = startPpm <= limitPpm
                ? 0
                : Math.log((startPpm - level) / (limitPpm - level)) / model.ratePerMinute();
        double litres = minutes * model.flowLitresPerMinute();
        return new Needed(minutes, litres / model.volumeLitres(), litres);
    }

    private static boolean staysBelow(MixingModel model, double limitPpm) {
        return model.ratePerMinute() == 0 || model.levelPpm() <= limitPpm;
    }

    private static Set<Obstacle> against(MixingModel model, double limitPpm) {
        Set<Obstacle> against = EnumSet.noneOf(Obstacle.class);
        if (model.effectiveFlow() == 0) {
            against.add(Obstacle.NO_FLOW);
            return against;
        }
        if (limitPpm <= model.supplyPpm()) {
            against.add(Obstacle.SUPPLY);
        } else if (limitPpm <= model.levelPpm()) {
            against.add(Obstacle.LEAK);
        }
        return against;
    }
}
