package brightseam.crash;

import brightseam.bins.BinCommand;
import brightseam.bins.shell.Bins;
import brightseam.demo.Cupboard;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Rebuild;
import brightseam.line.Station;
import brightseam.line.shell.Stations;
import brightseam.people.PersonCommand;
import brightseam.people.Recognition;
import brightseam.people.Role;
import brightseam.people.shell.Authenticator;
import brightseam.people.shell.People;
import brightseam.procedure.BinClass;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.traveller.NextAction;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.ReleaseOrder;
import brightseam.traveller.shell.Releases;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/**
 * A bench over plain HTTP, for the tablets of {@link CrashHarness}: each call does the next thing that the card of two
 * lots says, through the services that the real bench uses, signatures by badge and PIN. Answers every entry that is
 * acknowledged. Part of the tests, and there only where {@code brightseam.crash-desk} asks for it.
 */
@RestController
@ConditionalOnProperty("brightseam.crash-desk")
class CrashDesk {

    static final String STORED = "stored";
    static final String OVER = "over";
    static final String PIN = "271828";
    private static final KitId KIT = new KitId("K-7000");
    private static final HeatId HEAT = new HeatId("H-4471");
    private static final Lots.Lot LOT = new Lots.Lot("HDF-7000-01", "Lot of the crash test", 2, HEAT, "TUBE");
    private static final int ENTRIES_AT_ONCE = 2_000;

    private final Authenticator authenticator;
    private final TravellerActions actions;
    private final Releases releases;
    private final Travellers travellers;
    private final People people;
    private final Stations stations;
    private final Bins bins;
    private final Cupboard cupboard;
    private final Lots lots;
    private final Ledger ledger;
    private final Rebuild rebuild;
    private final ShopClock clock;

    CrashDesk(Authenticator authenticator, TravellerActions actions, Releases releases, Travellers travellers,
            People people, Stations stations, Bins bins, Cupboard cupboard, Lots lots, Ledger ledger,
            Rebuild rebuild, ShopClock clock) {
        this.authenticator = authenticator;
        this.actions = actions;
        this.releases = releases;
        this.travellers = travellers;
        this.people = people;
        this.stations = stations;
        this.bins = bins;
        this.cupboard = cupboard;
        this.lots = lots;
        this.ledger = ledger;
        this.rebuild = rebuild;
        this.clock = clock;
    }

    /** The badge of the fabricator at {@code tablet}. */
    static BadgeId badge(int tablet) {
        return new BadgeId("P-7" + String.format("%03d", tablet));
    }

    /** Makes the kit, and a fabricator with a PIN for each tablet. */
    @PostMapping("/crash/people")
    String people(@RequestParam int tablets) {
        lots.open(KIT, "Crash test", Duration.ofDays(1), List.of(LOT));
        for (int tablet = 0; tablet < tablets; tablet++) {
            Origin origin = origin(DemoPerson.ODA_MARSH.badge(), "Office");
            people.run(new PersonCommand.Register(
                    origin, badge(tablet), "Fabricator " + tablet, List.of(Role.FABRICATOR)));
            people.setPin(origin(badge(tablet), "Crash " + tablet), badge(tablet), PIN);
        }
        return STORED;
    }

    /** Brings {@code bin} into use and releases two lots, which go through everything together. */
    @PostMapping("/crash/release")
    ResponseEntity<String> release(@RequestParam String bin) {
        if (bins.find(new BinId(bin)).isEmpty()) {
            bins.execute(new BinCommand.RegisterBin(new BinId(bin), BinClass.SHOP_BIN, Optional.empty(),
                    origin(DemoPerson.ODA_MARSH.badge(), "Office")));
        }
        ReleaseOrder order = new ReleaseOrder(KIT, new PartIdentity(LOT.partNumber(), LOT.description(), "A"),
                LOT.quantity(), HEAT, LOT.procedure(), Optional.empty());
        return answer(releases.release(
                new Actor(DemoPerson.BRAM_ODUYA.badge(), "Lead's desk"), List.of(order, order)));
    }

    /** Does the next thing on {@code pair}; answers {@link #OVER} where that is none of the dry bench. */
    @PostMapping("/crash/act")
    ResponseEntity<String> act(@RequestParam int tablet, @RequestParam List<String> pair, @RequestParam String bin) {
        List<TravellerId> ids = pair.stream().map(TravellerId::new).toList();
        Card card = travellers.find(ids.getFirst()).orElseThrow();
        Actor actor = new Actor(badge(tablet), "Crash " + tablet);
        return switch (card.next()) {
            case NextAction.PutInto put when put.classes().contains(BinClass.SHOP_BIN) ->
                    answer(actions.putInBin(actor, ids, new BinId(bin)));
            case NextAction.Begin begin -> begin(actor, ids, begin.step(), card);
            case NextAction.Read read -> answer(
                    actions.takeReading(actor, ids, read.step().id(), read.reading().id(), value(read.reading())));
            case NextAction.Sign sign -> sign(actor, ids, sign.step());
            default -> ResponseEntity.ok(OVER);
        };
    }

    /** The kind of what {@code lot} waits for, such as {@code Sign}. */
    @GetMapping("/crash/next")
    String next(@RequestParam String lot) {
        return travellers.find(new TravellerId(lot)).orElseThrow().next().getClass().getSimpleName();
    }

    /** The entries above {@code after}, one a line. */
    @GetMapping("/crash/ledger")
    String ledger(@RequestParam long after) {
        return ledger.readAllAfter(after, ENTRIES_AT_ONCE).stream()
                .map(entry -> String.join("\t", Long.toString(entry.position()), entry.stream().value(),
                        Long.toString(entry.version()), entry.type(), entry.previous(), entry.hash(), entry.json()))
                .collect(Collectors.joining("\n"));
    }

    /** What a rebuild of the projections would change; empty where nothing. */
    @GetMapping("/crash/differences")
    String differences() {
        return rebuild.compare().stream().map(Object::toString).collect(Collectors.joining("\n"));
    }

    @ExceptionHandler(NotStoredException.class)
    ResponseEntity<String> notStored(NotStoredException failure) {
        return ResponseEntity.status(503).body("not stored: " + failure.getMessage());
    }

    private ResponseEntity<String> begin(Actor actor, List<TravellerId> ids, Step step, Card card) {
        Optional<StationId> station = stations.all().stream()
                .filter(found -> found.stationClass().equals(step.station())).map(Station::id).findFirst();
        return answer(actions.startStep(
                actor, ids, step.id(), station, true, true, cupboard.take(step, List.of(card))));
    }

    private ResponseEntity<String> sign(Actor actor, List<TravellerId> ids, Step step) {
        return switch (authenticator.signing(actor.tablet(), actor.badge(), PIN)) {
            case Recognition.Recognised known -> answer(actions.signStep(actor, ids, step.id(), known.signer()));
            case Recognition.NotRecognised not -> ResponseEntity.status(403).body(not.refusals().toString());
        };
    }

    private static BigDecimal value(ReadingSpec spec) {
        if (spec.isPassFail()) {
            return BigDecimal.ONE;
        }
        BigDecimal least = spec.limits().minimum().orElse(BigDecimal.ZERO);
        BigDecimal most = spec.limits().maximum().orElse(least);
        return least.add(most).divide(BigDecimal.TWO, spec.decimals(), RoundingMode.HALF_UP);
    }

    private static ResponseEntity<String> answer(Outcome<?> outcome) {
        return switch (outcome) {
            case Outcome.Done<?> done -> ResponseEntity.ok(done.entries().stream().map(CrashDesk::line)
                    .collect(Collectors.joining("", "", STORED)));
            case Outcome.Refused<?> refused -> ResponseEntity.status(409).body(refused.refusals().toString());
        };
    }

    private static String line(Entry entry) {
        return entry.stream() + " " + entry.version() + " " + entry.hash() + " " + entry.type() + "\n";
    }

    private Origin origin(BadgeId by, String tablet) {
        return new Origin(clock.now(), by, tablet, clock.isDemo());
    }
}
