package brightseam.demo;

import static brightseam.demo.Bench.codes;
import static brightseam.demo.DemoPerson.BRAM_ODUYA;
import static brightseam.demo.DemoPerson.ILKA_FERROW;
import static brightseam.demo.DemoPerson.SANNA_VEIT;
import static brightseam.demo.DemoPerson.TESSA_QUARLE;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.bins.shell.Bins;
import brightseam.browser.ShopServer;
import brightseam.kernel.BinId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.demo.Lots.Lot;
import brightseam.ledger.Outcome;
import brightseam.line.BathCommand;
import brightseam.line.BathLock;
import brightseam.line.BathQuantity;
import brightseam.line.BathVerdict;
import brightseam.line.LoadTaken;
import brightseam.line.shell.Baths;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.ProcessControl;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Baths and travellers together: what is refused at a tank, and what a bad bath does to everything that was in it. */
class BathsInUseTest {

    private static final StepId DEGREASE = new StepId("alkaline-degrease");
    private static final StepId PICKLE = new StepId("acid-pickle");
    private static final StepId RINSE = new StepId("pickle-rinse");
    private static final StationId ACID = new StationId("S-PICKLE-1");
    private static final StationId WATER = new StationId("S-RINSE-2");

    private static ShopServer shop;
    private static int kits;
    private static int samples;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo("--brightseam.demo-past=false");
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    /** Whatever went in before is proven good, and the tank open. */
    @BeforeEach
    void prove() {
        analyse("1.6");
    }

    @Test
    void a_bad_analysis_stops_the_tank_and_everything_that_was_in_it_even_what_was_set_apart_since() {
        List<TravellerId> through = lots(1);
        story().advance(through, new StepId("dry"));
        TravellerId tube = through.getFirst();
        Crew.done(actions().reportNonconformance(
                crew().actor(ILKA_FERROW), tube, List.of(2), "scratch on piece 2"));
        TravellerId apart = Crew.done(shop.bean(InspectorActions.class).setApart(crew().actor(SANNA_VEIT), tube,
                List.of(2), "scratch", crew().signer(SANNA_VEIT))).id();
        List<TravellerId> waiting = lots(1);
        story().advance(waiting, PICKLE);

        assertThat(analyse("0.8").suspects()).containsExactly(tube, apart);

        assertThat(traveller(tube).isSuspect()).isTrue();
        assertThat(traveller(apart).isSuspect()).isTrue();
        assertThat(traveller(tube).openNonconformances()).anySatisfy(nc -> {
            assertThat(nc.cause()).isEqualTo(Nonconformance.Cause.SUSPECT);
            assertThat(nc.step()).isEqualTo(PICKLE);
            assertThat(nc.text()).contains("S-PICKLE-1").contains("out of limits");
        });
        assertThat(codes(start(waiting, PICKLE, ACID))).containsExactly("bath-below-limit");
        assertThat(traveller(waiting.getFirst()).isSuspect()).isFalse();

        List<TravellerId> next = lots(1);
        story().advance(next, DEGREASE);
        assertThat(codes(start(next, DEGREASE, new StationId("S-DEGREASE-1")))).containsExactly("no-fit-tank-after");

        assertThat(analyse("1.6").cause()).isEmpty();
        assertThat(start(next, DEGREASE, new StationId("S-DEGREASE-1"))).isInstanceOf(Outcome.Done.class);
    }

    @Test
    void a_bath_found_bad_takes_the_lead_one_signature() {
        List<TravellerId> through = lots(1);
        story().advance(through, new StepId("deionised-rinse"));
        assertThat(control().suspects(ACID)).containsAll(through);
        BathVerdict bad = Crew.done(control().findBad(
                crew().actor(BRAM_ODUYA), ACID, "Smut on the coupon", crew().signer(BRAM_ODUYA)));
        assertThat(bad.suspects()).containsAll(through);
        assertThat(control().suspects(ACID)).isEmpty();
        analyse("1.6");
        Crew.done(shop.bean(Baths.class).execute(new BathCommand.UnlockBath(ACID, BathLock.Cause.FOUND_BAD,
                "coupon bright again", crew().origin(TESSA_QUARLE), crew().signer(TESSA_QUARLE))));
        assertThat(bath().objections(shop.bean(brightseam.kernel.shell.ShopClock.class).now())).isEmpty();
    }

    @Test
    void the_fill_is_written_down_as_what_touched_the_pieces() {
        List<TravellerId> through = lots(1);
        story().advance(through, PICKLE);
        Crew.done(start(through, PICKLE, ACID));
        assertThat(shop.bean(Travellers.class).record(through.getFirst())).extracting(recorded -> recorded.event())
                .filteredOn(TravellerEvent.ContactMade.class::isInstance).last()
                .satisfies(event -> assertThat(((TravellerEvent.ContactMade) event).contacts()).singleElement()
                        .satisfies(contact -> {
                            assertThat(contact.kind()).isEqualTo(ContactKind.BATH);
                            assertThat(contact.label()).isEqualTo("S-PICKLE-1");
                            assertThat(contact.lot()).isEqualTo("fill 1");
                        }));
        story().advance(through, new StepId("deionised-rinse"));
    }

    @Test
    void of_two_tablets_that_begin_at_once_for_the_last_place_one_is_told_that_the_tank_is_occupied()
            throws Exception {
        List<TravellerId> three = lots(3);
        story().advance(three, PICKLE);
        apart(three);
        Crew.done(start(three.subList(0, 1), PICKLE, ACID));
        try (ExecutorService tablets = Executors.newFixedThreadPool(2)) {
            List<Future<Outcome<List<Traveller>>>> both = IntStream.of(1, 2)
                    .mapToObj(lot -> tablets.submit(() -> start(three.subList(lot, lot + 1), PICKLE, ACID))).toList();
            assertThat(List.of(codes(both.getFirst().get()), codes(both.getLast().get())))
                    .containsExactlyInAnyOrder(List.of(), List.of("tank-occupied"));
        }
        assertThat(bath().inside()).extracting(LoadTaken::basket).hasSize(2);
        TravellerId late = three.stream().filter(id -> traveller(id).run(PICKLE).isEmpty()).findFirst().orElseThrow();
        story().advance(three.subList(0, 1), RINSE);
        assertThat(start(List.of(late), PICKLE, ACID)).isInstanceOf(Outcome.Done.class);
        three.forEach(id -> story().advance(List.of(id), action -> !(action instanceof NextAction.Holding)
                && traveller(id).run(PICKLE).flatMap(run -> run.holdEndedAt()).isPresent()));
    }

    @Test
    void a_locked_rinse_keeps_nobody_in_the_acid_but_opens_a_nonconformance() {
        List<TravellerId> load = lots(1);
        story().advance(load, RINSE);
        Crew.done(shop.bean(Baths.class).execute(new BathCommand.LockBath(
                WATER, "Water looks milky", crew().origin(BRAM_ODUYA), crew().signer(BRAM_ODUYA))));
        Crew.done(start(load, RINSE, WATER));
        assertThat(traveller(load.getFirst()).openNonconformances()).singleElement().satisfies(nc ->
                assertThat(nc.text()).contains("S-RINSE-2").contains("bath locked"));
        assertThat(traveller(load.getFirst()).run(RINSE)).isPresent();
        Crew.done(shop.bean(Baths.class).execute(new BathCommand.UnlockBath(WATER, BathLock.Cause.BY_HAND,
                "It was air", crew().origin(BRAM_ODUYA), crew().signer(BRAM_ODUYA))));
    }

    private static List<TravellerId> lots(int count) {
        KitId kit = new KitId("K-BATH-" + ++kits);
        List<Lot> lots = IntStream.range(0, count).mapToObj(lot -> new Lot(
                "HDF-77" + kits + "-" + lot, "Tube for the baths", 3, DemoHeat.LEG_TUBE, "TUBE")).toList();
        shop.bean(Lots.class).open(kit, "Bath trial", Duration.ofHours(30), lots);
        return shop.bean(Lots.class).release(kit, lots);
    }

    /** Each into a basket of its own. */
    private static void apart(List<TravellerId> load) {
        load.stream().skip(1).forEach(id -> Crew.done(
                actions().putInBin(crew().actor(ILKA_FERROW), List.of(id), empty())));
    }

    private static BinId empty() {
        return Stream.iterate(201, number -> number + 1).map(number -> new BinId("B-0" + number))
                .filter(bin -> shop.bean(Bins.class).inside(bin).isEmpty()).findFirst().orElseThrow();
    }

    private static BathVerdict analyse(String hydrofluoric) {
        return Crew.done(control().enterAnalysis(crew().actor(TESSA_QUARLE), ACID, new ProcessControl.Entered(
                "T-" + ++samples, "titration", Duration.ZERO, new TreeMap<>(Map.of(
                        BathQuantity.NITRIC_ACID, new BigDecimal("25"),
                        BathQuantity.HYDROFLUORIC_ACID, new BigDecimal(hydrofluoric),
                        BathQuantity.TEMPERATURE, new BigDecimal("31"),
                        BathQuantity.DISSOLVED_TITANIUM, new BigDecimal("7"))), List.of()),
                crew().signer(TESSA_QUARLE)));
    }

    private static Outcome<List<Traveller>> start(List<TravellerId> load, StepId step, StationId station) {
        return Bench.start(shop, load, step, station);
    }

    private static Traveller traveller(TravellerId id) {
        return shop.bean(Travellers.class).find(id).orElseThrow().traveller();
    }

    private static brightseam.line.Bath bath() {
        return shop.bean(Baths.class).find(ACID).orElseThrow().state();
    }

    private static TravellerActions actions() {
        return shop.bean(TravellerActions.class);
    }

    private static ProcessControl control() {
        return shop.bean(ProcessControl.class);
    }

    private static Story story() {
        return shop.bean(Story.class);
    }

    private static Crew crew() {
        return shop.bean(Crew.class);
    }
}
