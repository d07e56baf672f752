package brightseam.chamber;

import brightseam.purge.CyclePurge;
import brightseam.purge.MixingModel;
import brightseam.purge.RoomAir;
import brightseam.purge.StandardLitres;
import brightseam.purge.SweepPurge;
import java.time.Duration;

/**
 * What one session takes, or why no argon would do.
 *
 * <p>The purge runs from room air until oxygen and moisture both lie inside their limits, with the leak and the
 * mixing of the last test; then the chamber is held fit, and the lock is purged as often as it is said.
 */
public sealed interface ArgonNeed {

    /**
     * It can be done.
     *
     * @param purge how long the purge takes
     * @param fit how long the chamber is held fit
     * @param purgeStandardLitres for the purge
     * @param holdStandardLitres for the time held fit
     * @param lockStandardLitres for all passes of the lock
     */
    record Needed(Duration purge, Duration fit, double purgeStandardLitres, double holdStandardLitres,
            double lockStandardLitres) implements ArgonNeed {

        /** For all of it. */
        public double standardLitres() {
            return purgeStandardLitres + holdStandardLitres + lockStandardLitres;
        }

        /** The same session after {@code elapsed} of its purge. */
        public Needed afterPurging(Duration elapsed) {
            double share = purge.isZero() ? 0 : Math.clamp(1 - (double) elapsed.toMillis() / purge.toMillis(), 0, 1);
            return new Needed(Duration.ofMillis(Math.round(purge.toMillis() * share)), fit,
                    purgeStandardLitres * share, holdStandardLitres, lockStandardLitres);
        }

        /** The same session once it is fit: only holding and the lock, for {@code left} more. */
        public Needed oncePurged(Duration left) {
            double share = fit.isZero() ? 0 : Math.clamp((double) left.toMillis() / fit.toMillis(), 0, 1);
            return new Needed(Duration.ZERO, left, 0, holdStandardLitres * share, lockStandardLitres * share);
        }
    }

    /**
     * It never gets there.
     *
     * @param what which limit stands against it
     * @param limitPpm that limit
     * @param levelPpm where it would settle instead
     */
    record Impossible(What what, double limitPpm, double levelPpm) implements ArgonNeed {}

    /** Which limit a purge comes up against. */
    enum What {
        /** Oxygen in the chamber. */
        CHAMBER_OXYGEN,
        /** Moisture in the chamber. */
        CHAMBER_MOISTURE,
        /** Oxygen in the lock. */
        LOCK_OXYGEN
    }

    /**
     * The need of a session.
     *
     * @param chamber with its terms and its last leak test
     * @param purity the worst of the gas that is connected
     * @param fit how long the chamber is held fit
     * @param lockPasses how often the lock is purged
     */
    static ArgonNeed of(Chamber chamber, ArgonPurity purity, Duration fit, int lockPasses) {
        ChamberTerms terms = chamber.terms();
        MixingModel oxygen = new MixingModel(terms.purgedLitres().doubleValue(),
                terms.flows().purgeLitresPerMinute().doubleValue(), purity.oxygenPpm().doubleValue(),
                chamber.mixingEfficiency().doubleValue(), chamber.leakLitresPerMinute().doubleValue());
        double oxygenLimit = terms.limits().oxygenPpmToWeld().value().doubleValue();
        double moistureLimit = terms.limits().moisturePpm().value().doubleValue();
        SweepPurge dry = oxygen.forMoisture(purity.moisturePpm().doubleValue(), RoomAir.WORKSHOP)
                .sweep(RoomAir.WORKSHOP.moisturePpm(), moistureLimit);
        SweepPurge clear = oxygen.sweep(RoomAir.OXYGEN_PPM, oxygenLimit);
        if (clear instanceof SweepPurge.Impossible never) {
            return new Impossible(What.CHAMBER_OXYGEN, oxygenLimit, never.levelPpm());
        }
        if (dry instanceof SweepPurge.Impossible never) {
            return new Impossible(What.CHAMBER_MOISTURE, moistureLimit, never.levelPpm());
        }
        double lock = lockStandardLitres(terms, purity);
        if (Double.isNaN(lock)) {
            return new Impossible(What.LOCK_OXYGEN, terms.lock().oxygenPpmToOpen().value().doubleValue(),
                    purity.oxygenPpm().doubleValue());
        }
        double minutes = Math.max(((SweepPurge.Needed) clear).minutes(), ((SweepPurge.Needed) dry).minutes());
        return new Needed(minutes(minutes), fit,
                standard(minutes * terms.flows().purgeLitresPerMinute().doubleValue(), terms),
                standard(fit.toMillis() / 60_000.0 * terms.flows().holdLitresPerMinute().doubleValue(), terms),
                lockPasses * lock);
    }

    /** What one pass of the lock takes, in standard litres; no number where its limit is never reached. */
    private static double lockStandardLitres(ChamberTerms terms, ArgonPurity purity) {
        LockGear lock = terms.lock();
        double supply = purity.oxygenPpm().doubleValue();
        double limit = lock.oxygenPpmToOpen().value().doubleValue();
        double litres = lock.volumeLitres().doubleValue();
        return switch (lock.method().kind()) {
            case SWEEP -> switch (new MixingModel(litres, terms.flows().lockLitresPerMinute().doubleValue(), supply,
                    1, 0).sweep(RoomAir.OXYGEN_PPM, limit)) {
                case SweepPurge.Needed needed -> standard(terms.flows().lockLitresPerMinute().doubleValue()
                        * Math.max(needed.minutes(), lock.method().leastTime().orElseThrow().toMillis() / 60_000.0),
                        terms);
                case SweepPurge.Impossible ignored -> Double.NaN;
            };
            case VACUUM_CYCLES -> switch (CyclePurge.to(new CyclePurge.Vessel(litres,
                    lock.method().lowPressureBarAbsolute().orElseThrow().doubleValue(), RoomAir.ATMOSPHERE_BAR,
                    terms.flows().temperatureCelsius().doubleValue()), RoomAir.OXYGEN_PPM, limit, supply)) {
                case CyclePurge.Needed needed -> needed.argonStandardLitres();
                case CyclePurge.Impossible ignored -> Double.NaN;
            };
        };
    }

    private static Duration minutes(double minutes) {
        return Duration.ofMillis(Math.round(minutes * 60_000));
    }

    /** {@code litres} of gas in the chamber as standard litres. */
    static double standard(double litres, ChamberTerms terms) {
        return StandardLitres.of(litres, RoomAir.ATMOSPHERE_BAR, terms.flows().temperatureCelsius().doubleValue());
    }
}
