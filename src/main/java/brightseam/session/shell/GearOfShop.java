package brightseam.session.shell;

import brightseam.chamber.ArgonNeed;
import brightseam.chamber.ArgonOutlook;
import brightseam.chamber.ArgonPurity;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Chamber;
import brightseam.chamber.ChamberCommand;
import brightseam.chamber.ChamberLimits;
import brightseam.chamber.ChamberTerms;
import brightseam.chamber.ConsumptionReport;
import brightseam.chamber.LockGear;
import brightseam.chamber.shell.ArgonStore;
import brightseam.chamber.shell.ArgonWatch;
import brightseam.chamber.shell.Chambers;
import brightseam.device.Feed;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.purge.CyclePurge;
import brightseam.purge.LockOpening;
import brightseam.purge.MixingModel;
import brightseam.purge.RoomAir;
import brightseam.purge.SweepPurge;
import brightseam.session.ArgonFact;
import brightseam.session.ArgonUse;
import brightseam.session.ChamberSession;
import brightseam.session.GasLimits;
import brightseam.session.LockNeed;
import brightseam.supply.shell.Supplies;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** The chambers and the argon of the shop's registers. */
@Component
class GearOfShop implements ChamberGear {

    private static final double MILLIS_PER_MINUTE = 60_000;
    /** Full mixing of both rooms: the cautious value, see {@link LockOpening}. */
    private static final double DOOR_EXCHANGE = 1;

    private final Chambers chambers;
    private final ArgonStore store;
    private final ArgonWatch argon;
    private final Supplies supplies;
    private final Readings readings;

    GearOfShop(Chambers chambers, ArgonStore store, ArgonWatch argon, Supplies supplies, Readings readings) {
        this.chambers = chambers;
        this.store = store;
        this.argon = argon;
        this.supplies = supplies;
        this.readings = readings;
    }

    @Override
    public List<StationId> chambers() {
        return chambers.all().stream().map(Chamber::station).toList();
    }

    @Override
    public Optional<StationId> lockOf(StationId chamber) {
        return terms(chamber).map(terms -> terms.lock().station());
    }

    /** Where readings are typed in, their interval is no gap. */
    @Override
    public Optional<GasLimits> limits(StationId chamber) {
        return terms(chamber).map(ChamberTerms::limits).map(limits -> new GasLimits(
                limits.oxygenPpmToWeld().value(), Optional.of(limits.moisturePpm().value()), limits.dwell(),
                isTyped(chamber) ? longer(limits) : limits.longestGap()));
    }

    @Override
    public Optional<Outlook> outlook(StationId chamber, Moment now) {
        return chambers.find(chamber).map(Versioned::state).flatMap(known -> argon.outlook(
                        chamber, Optional.empty(), Optional.empty(), now)
                .map(outlook -> outlook(known, outlook)));
    }

    @Override
    public Optional<LockNeed> lockNeed(StationId chamber, Moment now) {
        return terms(chamber).flatMap(terms -> need(terms, connected(chamber).map(ArgonSource::purity),
                readings.now(terms.lock().station(), MeterPlace.LOCK, MeterQuantity.OXYGEN_PPM)
                        .map(meter -> meter.meter().id())));
    }

    @Override
    public Optional<BigDecimal> oxygenPpmAfterOpening(
            StationId chamber, BigDecimal chamberPpm, BigDecimal lockPpm) {
        return terms(chamber).map(terms -> new LockOpening(terms.purgedLitres().doubleValue(),
                        terms.lock().volumeLitres().doubleValue(), DOOR_EXCHANGE)
                        .after(chamberPpm.doubleValue(), lockPpm.doubleValue()).chamberPpm())
                .map(ppm -> BigDecimal.valueOf(ppm).setScale(1, RoundingMode.CEILING));
    }

    @Override
    public List<Refusal> objections(StationId chamber, SupplyId thing) {
        return chambers.objections(chamber, List.of(thing));
    }

    /** Source by source, by meters and readings at both ends of its time; what was not read is left out. */
    @Override
    public List<ArgonUse> used(ChamberSession session, Moment now) {
        return count(session, now).map(report -> report.sources().stream()
                .map(use -> new ArgonUse(use.supply(), lot(use.supply()), use.standardLitres())).toList())
                .orElse(List.of());
    }

    @Override
    public Prepared<?> noteUse(ChamberSession session, Origin origin) {
        return count(session, origin.at()).<Prepared<?>>map(report -> chambers.prepare(
                        new ChamberCommand.NoteArgonUsed(session.chamber(), report, origin)))
                .orElseGet(() -> new Prepared.Ready<>(List.of(), session));
    }

    private Optional<ConsumptionReport> count(ChamberSession session, Moment now) {
        return session.gas().purge().flatMap(purge -> argon.count(session.chamber(), session.id(),
                purge.argon().neededStandardLitres(), purge.startedAt(), now));
    }

    private Outlook outlook(Chamber chamber, ArgonOutlook outlook) {
        Optional<BigDecimal> needed = outlook.neededStandardLitres();
        Optional<ArgonFact> fact = connected(chamber.station()).map(source -> new ArgonFact(source.id(),
                lot(source.id()), outlook.leftStandardLitres(), needed.orElse(BigDecimal.ZERO),
                source.purity().oxygenPpm(), source.purity().moisturePpm()));
        Optional<Duration> purge = outlook.need() instanceof ArgonNeed.Needed taken
                ? Optional.of(taken.purge()) : Optional.empty();
        return new Outlook(fact, purge, chamber.terms().usual().fit(), needed,
                List.copyOf(outlook.objections()));
    }

    private static Optional<LockNeed> need(
            ChamberTerms terms, Optional<ArgonPurity> purity, Optional<SupplyId> meter) {
        LockGear lock = terms.lock();
        BigDecimal most = lock.oxygenPpmToOpen().value();
        double supplyPpm = purity.map(ArgonPurity::oxygenPpm).map(BigDecimal::doubleValue).orElse(0.0);
        return switch (lock.method().kind()) {
            case SWEEP -> sweep(terms, supplyPpm).or(() -> meter.flatMap(any -> lock.method().leastTime()))
                    .map(time -> new LockNeed(LockNeed.Method.SWEEP, time, 0, most, meter));
            case VACUUM_CYCLES -> cycles(terms, supplyPpm).or(() -> meter.map(any -> 0))
                    .map(cycles -> new LockNeed(
                            LockNeed.Method.VACUUM_CYCLES, Duration.ZERO, cycles, most, meter));
        };
    }

    private static Optional<Duration> sweep(ChamberTerms terms, double supplyPpm) {
        LockGear lock = terms.lock();
        SweepPurge purge = new MixingModel(lock.volumeLitres().doubleValue(),
                terms.flows().lockLitresPerMinute().doubleValue(), supplyPpm, ArgonWatch.FULL_MIXING, 0)
                .sweep(RoomAir.OXYGEN_PPM, lock.oxygenPpmToOpen().value().doubleValue());
        Duration least = lock.method().leastTime().orElseThrow();
        return purge instanceof SweepPurge.Needed needed
                ? Optional.of(longer(least, Duration.ofMillis((long) Math.ceil(
                        needed.minutes() * MILLIS_PER_MINUTE)))) : Optional.empty();
    }

    private static Optional<Integer> cycles(ChamberTerms terms, double supplyPpm) {
        LockGear lock = terms.lock();
        CyclePurge purge = CyclePurge.to(new CyclePurge.Vessel(lock.volumeLitres().doubleValue(),
                        lock.method().lowPressureBarAbsolute().orElseThrow().doubleValue(), RoomAir.ATMOSPHERE_BAR,
                        terms.flows().temperatureCelsius().doubleValue()),
                RoomAir.OXYGEN_PPM, lock.oxygenPpmToOpen().value().doubleValue(), supplyPpm);
        return purge instanceof CyclePurge.Needed needed ? Optional.of(needed.cycles()) : Optional.empty();
    }

    /** The source that is drawn first. */
    private Optional<ArgonSource> connected(StationId chamber) {
        return chambers.find(chamber).stream().flatMap(found -> found.state().connected().stream()).findFirst()
                .flatMap(store::find).map(Versioned::state);
    }

    private Optional<ChamberTerms> terms(StationId chamber) {
        return chambers.find(chamber).map(found -> found.state().terms());
    }

    private String lot(SupplyId supply) {
        return supplies.find(supply).map(found -> found.state().lot()).orElse("-");
    }

    private boolean isTyped(StationId chamber) {
        return readings.now(chamber, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM).map(MeterNow::meter)
                .filter(meter -> meter.feed() instanceof Feed.Typed).isPresent();
    }

    private static Duration longer(ChamberLimits limits) {
        return longer(limits.longestGap(), limits.typedEvery());
    }

    private static Duration longer(Duration one, Duration other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}
