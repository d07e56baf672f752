package brightseam.demo;

import static brightseam.demo.Bench.codes;
import static brightseam.demo.Bench.refused;
import static brightseam.demo.DemoPerson.ILKA_FERROW;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.bins.shell.Bins;
import brightseam.browser.ShopServer;
import brightseam.kernel.BinId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.TravellerEvent.StepSigned;
import brightseam.traveller.TravellerEvent.StepStarted;
import brightseam.traveller.shell.LoadActions;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Loads of two procedures: joined, begun, signed once, parted, and taken out of, through the shop's services. */
class LoadsInUseTest {

    private static final StepId DEGREASE = new StepId("alkaline-degrease");
    private static final StepId PICKLE = new StepId("acid-pickle");
    private static final StationId ALKALI = new StationId("S-DEGREASE-1");
    private static final StationId ACID = new StationId("S-PICKLE-1");

    private static ShopServer shop;
    private static int kits;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo("--brightseam.demo-past=false");
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @Test
    void two_procedures_are_degreased_in_one_basket_and_signed_once() {
        List<TravellerId> load = inOneBasket(tubeAndFitting("9", "5"));
        story().advance(load, PICKLE);
        load.forEach(id -> {
            List<TravellerId> other = load.stream().filter(mate -> !mate.equals(id)).toList();
            assertThat(all(id, StepStarted.class)).filteredOn(e -> e.step().equals(DEGREASE)).singleElement()
                    .satisfies(e -> assertThat(e.loadWith()).isEqualTo(other));
            assertThat(all(id, StepSigned.class)).filteredOn(e -> e.step().equals(DEGREASE)).singleElement()
                    .satisfies(e -> assertThat(e.loadWith()).isEqualTo(other));
        });
        Traveller tube = traveller(load.getFirst());
        Traveller fitting = traveller(load.getLast());
        assertThat(tube.run(DEGREASE).orElseThrow().holdEndedAt())
                .isEqualTo(fitting.run(DEGREASE).orElseThrow().holdEndedAt());
    }

    @Test
    void grades_that_may_be_degreased_together_are_parted_before_the_acid() {
        List<TravellerId> load = inOneBasket(tubeAndFitting("9", "5"));
        story().advance(load, PICKLE);
        assertThat(refused(start(load, PICKLE, ACID))).singleElement().satisfies(refusal -> {
            assertThat(refusal.code()).isEqualTo("load-grades-mixed");
            assertThat(refusal.evidence()).containsEntry("takeOut", load.getLast().value());
        });
        assertThat(codes(start(load.subList(0, 1), PICKLE, ACID))).containsExactly("left-in-basket");
        Crew.done(actions().putInBin(crew().actor(ILKA_FERROW), load.subList(1, 2), basket()));
        Crew.done(start(load.subList(0, 1), PICKLE, ACID));
        assertThat(all(load.getFirst(), StepStarted.class)).last()
                .satisfies(e -> assertThat(e.loadWith()).isEmpty());
        story().advance(load.subList(0, 1), new StepId("dry"));
    }

    @Test
    void a_basket_is_joined_at_the_same_step_and_never_in_its_bath() {
        List<TravellerId> first = inOneBasket(lots(tube("9")));
        List<TravellerId> second = lots(tube("9"));
        List<TravellerId> third = lots(tube("2"));
        BinId basket = traveller(first.getFirst()).placement().orElseThrow().bin();
        story().advance(third, new StepId("dimensional-inspection"));
        Stream.of(second).forEach(lot -> story().advance(lot, LoadsInUseTest::isBasketDue));
        Crew.done(actions().putInBin(crew().actor(ILKA_FERROW), second, basket));
        List<TravellerId> both = List.of(first.getFirst(), second.getFirst());
        story().advance(both, action -> action instanceof NextAction.Holding);
        story().advance(third, LoadsInUseTest::isBasketDue);
        assertThat(codes(actions().putInBin(crew().actor(ILKA_FERROW), third, basket))).contains("basket-holds");
        assertThat(codes(actions().putInBin(crew().actor(ILKA_FERROW), second, basket())))
                .contains("hold-still-running");
        story().advance(both, PICKLE);
        assertThat(codes(actions().putInBin(crew().actor(ILKA_FERROW), third, basket)))
                .containsExactly("basket-at-another-step");
        Crew.done(actions().putInBin(crew().actor(ILKA_FERROW), second, basket()));
        story().advance(first, new StepId("deionised-rinse"));
    }

    @Test
    void a_piece_is_taken_out_of_a_running_soak_and_the_load_goes_on() {
        List<TravellerId> load = inOneBasket(tubeAndFitting("9", "5"));
        story().advance(load, action -> action instanceof NextAction.Holding);
        story().pass(Duration.ofMinutes(4));
        BinId rejects = basket();
        Traveller out = Crew.done(shop.bean(LoadActions.class).takeOut(crew().actor(ILKA_FERROW), load.getFirst(),
                List.of(2), "Reject: dent", rejects, crew().signer(ILKA_FERROW)));
        Traveller child = traveller(out.id());
        assertThat(out.id().value()).isEqualTo(load.getFirst() + ".1");
        assertThat(child.openNonconformances()).extracting(nc -> nc.cause())
                .containsExactly(Cause.HOLD_CUT_SHORT, Cause.REPORTED);
        assertThat(child.run(DEGREASE).orElseThrow().isHolding()).isFalse();
        assertThat(shop.bean(Bins.class).inside(rejects)).containsExactly(child.id());
        assertThat(traveller(load.getFirst()).pieces()).containsExactly(1, 3, 4);
        assertThat(traveller(load.getFirst()).run(DEGREASE).orElseThrow().isHolding()).isTrue();
        story().advance(load, PICKLE);

        List<TravellerId> rest = load.subList(1, 2);
        Crew.done(shop.bean(LoadActions.class).takeOut(crew().actor(ILKA_FERROW), rest.getFirst(),
                traveller(rest.getFirst()).pieces(), "Suspect: mark missing", rejects, crew().signer(ILKA_FERROW)));
        assertThat(shop.bean(Bins.class).inside(rejects)).containsExactlyInAnyOrder(child.id(), rest.getFirst());
        assertThat(traveller(rest.getFirst()).isInQuarantine()).isTrue();
        story().advance(load.subList(0, 1), new StepId("deionised-rinse"));
    }

    @Test
    void what_was_rejected_does_not_go_back_among_the_sound() {
        List<TravellerId> load = inOneBasket(tubeAndFitting("9", "5"));
        BinId other = traveller(inOneBasket(lots(tube("2"))).getFirst()).placement().orElseThrow().bin();
        assertThat(codes(shop.bean(LoadActions.class).takeOut(crew().actor(ILKA_FERROW), load.getFirst(), List.of(1),
                "Reject: dent", other, crew().signer(ILKA_FERROW)))).containsExactly("basket-at-another-step");
        assertThat(traveller(load.getFirst()).pieces()).hasSize(4);
    }

    private static List<TravellerId> inOneBasket(List<TravellerId> load) {
        story().advance(load, LoadsInUseTest::isBasketDue);
        Crew.done(actions().putInBin(crew().actor(ILKA_FERROW), load, basket()));
        return load;
    }

    private static boolean isBasketDue(NextAction action) {
        return action instanceof NextAction.PutInto put && put.step().id().equals(DEGREASE);
    }

    private static BinId basket() {
        return shop.bean(Shelf.class).free(List.of(brightseam.procedure.BinClass.PROCESS_BASKET), 2);
    }

    private static List<TravellerId> tubeAndFitting(String tubeGrade, String fittingGrade) {
        return lots(tube(tubeGrade), new Lots.Lot("HDF-9500-02", "Test foot", 3,
                fittingGrade.equals("5") ? DemoHeat.FITTING_BAR : DemoHeat.COLLAR_BAR, "FITTING"));
    }

    private static Lots.Lot tube(String grade) {
        return new Lots.Lot("HDF-9500-01", "Test tube", 4,
                grade.equals("9") ? DemoHeat.LEG_TUBE : DemoHeat.MAST_TUBE, "TUBE");
    }

    private static List<TravellerId> lots(Lots.Lot... lots) {
        KitId kit = new KitId("K-95" + String.format("%02d", ++kits));
        shop.bean(Lots.class).open(kit, "Loads", Duration.ofDays(2), List.of(lots));
        return shop.bean(Lots.class).release(kit, List.of(lots));
    }

    private static Outcome<List<Traveller>> start(List<TravellerId> load, StepId step, StationId station) {
        return Bench.start(shop, load, step, station);
    }

    private static <E extends TravellerEvent> List<E> all(TravellerId id, Class<E> type) {
        return shop.bean(Travellers.class).record(id).stream().map(recorded -> recorded.event())
                .filter(type::isInstance).map(type::cast).toList();
    }

    private static Traveller traveller(TravellerId id) {
        return shop.bean(Travellers.class).find(id).orElseThrow().traveller();
    }

    private static TravellerActions actions() {
        return shop.bean(TravellerActions.class);
    }

    private static Story story() {
        return shop.bean(Story.class);
    }

    private static Crew crew() {
        return shop.bean(Crew.class);
    }
}
