package brightseam.chamber;

import brightseam.kernel.Moment;
import brightseam.purge.MixingModel;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands against a source of argon, each rule by itself. */
public final class ArgonRules {

    /**
     * So much more than at the reading before is still a gauge's error and not a refill: a gauge of class 2.5 on a wall
     * that is some degrees warmer; our own bound.
     */
    private static final double RISE_MAX_SHARE = 0.05;

    private ArgonRules() {}

    /** Everything that stands against connecting {@code source} to {@code chamber}; nothing where it may feed it. */
    public static List<ArgonRefusal> connecting(ArgonSource source, Chamber chamber, Moment now) {
        List<ArgonRefusal> against = new ArrayList<>();
        gone(source).ifPresent(against::add);
        source.connectedTo().filter(station -> !station.equals(chamber.station())).ifPresent(station ->
                against.add(new ArgonRefusal.ArgonConnectedElsewhere(source.id(), station)));
        content(source, chamber.terms().manifold(), now).ifPresent(against::add);
        against.addAll(purity(source, chamber));
        return against;
    }

    /** Whether its gas could ever bring {@code chamber} inside its limits, with the leak of its last test. */
    static List<ArgonRefusal> purity(ArgonSource source, Chamber chamber) {
        List<ArgonRefusal> against = new ArrayList<>();
        ChamberLimits limits = chamber.terms().limits();
        double settles = new MixingModel(chamber.terms().purgedLitres().doubleValue(),
                chamber.terms().flows().holdLitresPerMinute().doubleValue(),
                source.purity().oxygenPpm().doubleValue(), 1, chamber.leakLitresPerMinute().doubleValue()).levelPpm();
        if (settles >= limits.oxygenPpmToWeld().value().doubleValue()) {
            against.add(new ArgonRefusal.ArgonTooImpure(source.id(), chamber.station(), source.purity().oxygenPpm(),
                    rounded(settles), limits.oxygenPpmToWeld().value()));
        }
        if (source.purity().moisturePpm().compareTo(limits.moisturePpm().value()) >= 0) {
            against.add(new ArgonRefusal.ArgonTooMoist(source.id(), chamber.station(),
                    source.purity().moisturePpm(), limits.moisturePpm().value()));
        }
        return against;
    }

    static Optional<ArgonRefusal> gone(ArgonSource source) {
        return source.standing() == ArgonSource.Standing.EMPTY
                ? Optional.of(new ArgonRefusal.ArgonEmpty(source.id())) : retired(source);
    }

    static Optional<ArgonRefusal> retired(ArgonSource source) {
        return Optional.of(source).filter(one -> one.standing() == ArgonSource.Standing.RETIRED)
                .map(one -> new ArgonRefusal.ArgonRetired(one.id()));
    }

    static Optional<ArgonRefusal> stillConnected(ArgonSource source) {
        return source.connectedTo().map(station -> new ArgonRefusal.ArgonStillConnected(source.id(), station));
    }

    static List<ArgonRefusal> reading(ArgonSource source, ArgonReading reading, boolean corrects, Moment now) {
        if (!reading.isOf(source.vessel().form())) {
            return List.of(new ArgonRefusal.ReadingOfAnotherForm(source.id(), source.vessel().form()));
        }
        List<ArgonRefusal> against = new ArrayList<>();
        Optional<Moment> earliest = source.last().map(ArgonReading::at);
        earliest.filter(at -> reading.at().isBefore(at) || reading.at().isAfter(now)).ifPresent(at ->
                against.add(new ArgonRefusal.ReadingOutOfOrder(source.id(), reading.at(), at)));
        if (!corrects) {
            rise(source, reading).ifPresent(against::add);
        }
        return against;
    }

    private static Optional<ArgonRefusal> rise(ArgonSource source, ArgonReading reading) {
        return source.last().flatMap(before -> {
            double held = Consumption.contentStandardLitres(source.vessel(), before);
            double holds = Consumption.contentStandardLitres(source.vessel(), reading);
            return holds <= held * (1 + RISE_MAX_SHARE) ? Optional.empty() : Optional.of(
                    new ArgonRefusal.ReadingRises(source.id(), whole(held), whole(holds)));
        });
    }

    private static Optional<ArgonRefusal> content(ArgonSource source, Manifold manifold, Moment now) {
        if (source.last().isEmpty()) {
            return Optional.of(new ArgonRefusal.ArgonNeverRead(source.id()));
        }
        boolean nothing = ArgonLeft.of(source, manifold, false, now).orElseThrow().usableStandardLitres() <= 0;
        ArgonReading last = source.last().get();
        return !nothing ? Optional.empty() : Optional.of(source.vessel().form().isLiquid()
                ? new ArgonRefusal.ArgonAtRest(source.id(), last.levelPercent().orElseThrow(),
                        manifold.restLevelPercent(), "%")
                : new ArgonRefusal.ArgonAtRest(source.id(), last.pressureBarGauge().orElseThrow(),
                        manifold.endPressureBarGauge(), "bar"));
    }

    /** {@code value} to three figures, as refusals show it. */
    static BigDecimal rounded(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(3)).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** {@code litres} to the whole litre. */
    static BigDecimal whole(double litres) {
        return BigDecimal.valueOf(litres).setScale(0, RoundingMode.HALF_UP);
    }
}
