package brightseam.session.shell;

import static brightseam.demo.DemoPerson.BRAM_ODUYA;
import static brightseam.demo.DemoPerson.RHEA_TOLLAND;

import brightseam.browser.ShopServer;
import brightseam.chamber.ArgonCommand;
import brightseam.chamber.ArgonFlows;
import brightseam.chamber.ArgonPurity;
import brightseam.chamber.ArgonReading;
import brightseam.chamber.ArgonVessel;
import brightseam.chamber.ChamberCommand;
import brightseam.chamber.ChamberLimits;
import brightseam.chamber.ChamberTerms;
import brightseam.chamber.CitedLimit;
import brightseam.chamber.LockGear;
import brightseam.chamber.LockMethod;
import brightseam.chamber.Manifold;
import brightseam.chamber.UsualSession;
import brightseam.chamber.shell.ArgonStore;
import brightseam.chamber.shell.Chambers;
import brightseam.chamber.shell.ChangeOverOrder;
import brightseam.demo.Crew;
import brightseam.demo.DemoPerson;
import brightseam.device.FeedTerms;
import brightseam.device.HealthRule;
import brightseam.device.MeterCommand;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.MeterTerms;
import brightseam.device.Reading;
import brightseam.device.shell.Meters;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.line.StationCommand;
import brightseam.line.shell.Stations;
import brightseam.people.Signer;
import brightseam.procedure.Vocabulary;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.shell.Actor;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.LongStream;

/** A chamber of the tests' own in the demo shop, whose meters say what the tests let them say. */
final class ChamberInShop {

    static final StationId CHAMBER = new StationId("S-CHAMBER-9");
    static final StationId LOCK = new StationId("S-LOCK-9");
    static final SupplyId OXYGEN = new SupplyId("G-9001");
    static final SupplyId MOISTURE = new SupplyId("G-9002");
    static final SupplyId LOCK_OXYGEN = new SupplyId("G-9003");
    static final SupplyId ROOM = new SupplyId("G-9004");
    static final SupplyId ARGON = new SupplyId("A-9001");
    static final Duration DWELL = Duration.ofSeconds(20);
    private static final long EVERY_MILLIS = 1_000;

    private final ShopServer shop;

    ChamberInShop(ShopServer shop) {
        this.shop = shop;
        station(CHAMBER, "chamber");
        station(LOCK, "transfer-lock");
        done(bean(Chambers.class).execute(new ChamberCommand.RegisterChamber(CHAMBER, terms(), origin(), lead())));
        meter(OXYGEN, CHAMBER, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM, "250000");
        meter(MOISTURE, CHAMBER, MeterPlace.CHAMBER, MeterQuantity.MOISTURE_PPM, "25000");
        meter(LOCK_OXYGEN, LOCK, MeterPlace.LOCK, MeterQuantity.OXYGEN_PPM, "250000");
        meter(ROOM, CHAMBER, MeterPlace.ROOM, MeterQuantity.OXYGEN_PERCENT, "25");
        argon();
    }

    /** Lets {@code meter} read {@code value} each second for {@code seconds} up to now. */
    void reads(SupplyId meter, double value, long seconds) {
        long now = now().elapsedMillis();
        bean(Readings.class).take(meter, LongStream.rangeClosed(0, seconds)
                .mapToObj(back -> new Reading(now - (seconds - back) * EVERY_MILLIS, value)).toList());
    }

    /** Brings a supply of {@code type} into the shop. */
    SupplyId supply(String label, String type) {
        Vocabulary.SupplyType row = bean(Vocabulary.class).supplies().get(type);
        done(bean(Supplies.class).execute(new SupplyCommand.RegisterSupply(new SupplyId(label), row, row.name(),
                "LOT " + label, "Fennmark (invented)", Optional.of(Supplies.day(now()).plusDays(90)),
                row.mayTouch(), origin())));
        return new SupplyId(label);
    }

    Moment now() {
        return bean(ShopClock.class).now();
    }

    Actor welder() {
        return bean(Crew.class).actor(RHEA_TOLLAND);
    }

    Signer signer(DemoPerson person) {
        return bean(Crew.class).signer(person);
    }

    Signer lead() {
        return signer(BRAM_ODUYA);
    }

    Origin origin() {
        Actor actor = bean(Crew.class).actor(BRAM_ODUYA);
        return new Origin(now(), actor.badge(), actor.tablet(), true);
    }

    <T> T bean(Class<T> type) {
        return shop.bean(type);
    }

    static <R> Outcome.Done<R> done(Outcome<R> outcome) {
        if (outcome instanceof Outcome.Done<R> done) {
            return done;
        }
        throw new AssertionError(outcome);
    }

    private void station(StationId station, String stationClass) {
        done(bean(Stations.class).execute(new StationCommand.RegisterStation(
                station, stationClass, "Of the tests", false, origin())));
    }

    private void meter(SupplyId id, StationId station, MeterPlace place, MeterQuantity quantity, String high) {
        supply(id.value(), quantity == MeterQuantity.OXYGEN_PERCENT ? "room-oxygen-monitor" : "oxygen-analyser");
        done(bean(Meters.class).execute(new MeterCommand.RegisterMeter(id, new MeterTerms(station, place, quantity,
                new BigDecimal("-1"), new BigDecimal(high), new BigDecimal("0.1"), Duration.ofMillis(EVERY_MILLIS),
                Duration.ofSeconds(5), new FeedTerms(FeedTerms.Kind.HTTP, Optional.empty(), Optional.empty()),
                new HealthRule(60, Duration.ZERO, Duration.ofDays(1), Duration.ofDays(1))), origin(), lead())));
    }

    private void argon() {
        Vocabulary.SupplyType bundle = bean(Vocabulary.class).supplies().get("argon-bundle");
        done(bean(ArgonStore.class).deliver(new SupplyCommand.RegisterSupply(ARGON, bundle, "Bundle of the tests",
                        "LOT A", "Hollin Cove Gases (invented)", Optional.of(Supplies.day(now()).plusDays(300)),
                        bundle.mayTouch(), origin()),
                new ArgonCommand.Deliver(ARGON, ArgonVessel.bundle(new BigDecimal("600"), new BigDecimal("200")),
                        new ArgonPurity(new BigDecimal("1"), new BigDecimal("1.5"), "C-1"),
                        Optional.of(ArgonReading.pressure(now(), new BigDecimal("180"), new BigDecimal("20"))),
                        origin())));
        done(bean(ArgonStore.class).changeOver(new ChangeOverOrder(CHAMBER, Optional.empty(), Optional.of(ARGON),
                Optional.empty(), Optional.empty(), false), origin(), lead()));
    }

    private static ChamberTerms terms() {
        return new ChamberTerms(new BigDecimal("600"), new BigDecimal("10"),
                new LockGear(LOCK, new BigDecimal("60"), LockMethod.sweep(Duration.ofMinutes(10)), limit("100")),
                new ArgonFlows(new BigDecimal("100"), new BigDecimal("20"), new BigDecimal("40"),
                        new BigDecimal("20")),
                new ChamberLimits(limit("20"), limit("30"), limit("50"), DWELL, Duration.ofSeconds(5),
                        Duration.ofMinutes(5), "invented"),
                new Manifold(2, new BigDecimal("5"), Optional.empty(), new BigDecimal("5"), "invented"),
                new UsualSession(Duration.ofHours(3), 2),
                new TreeSet<>(List.of("titanium", "stainless-steel", "tungsten", "cotton")));
    }

    private static CitedLimit limit(String value) {
        return new CitedLimit(new BigDecimal(value), "invented");
    }
}
