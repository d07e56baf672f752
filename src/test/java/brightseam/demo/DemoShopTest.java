package brightseam.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.browser.ShopServer;
import brightseam.kernel.HeatId;
import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Rebuild;
import brightseam.people.shell.FirstRun;
import brightseam.people.shell.People;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.scan.Label;
import brightseam.scan.LabelKind;
import brightseam.scan.RawScan;
import brightseam.scan.ScanParser;
import brightseam.session.shell.Sessions;
import brightseam.traveller.Disposition;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.Phase;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.Window;
import brightseam.traveller.WindowEnd;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.NoSuchBeanDefinitionException;

class DemoShopTest {

    private static final int ENTRIES_MAX = 100_000;

    private static final LocalDate TODAY = LocalDate.of(2030, 1, 1);

    private static ShopServer shop;
    private static Moment start;
    /** As they stood when the shop opened; other tests let time pass. */
    private static List<Card> first;

    @BeforeAll
    static void open_the_demo_shop() {
        shop = ShopServer.demo();
        start = shop.bean(ShopClock.class).now();
        first = shop.bean(Travellers.class).notEnded();
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @Test
    void its_past_ends_about_now() {
        assertThat(Duration.between(start.wall(), Instant.now()).abs()).isLessThan(Duration.ofMinutes(6));
        assertThat(start.elapsedMillis()).isGreaterThan(Duration.ofHours(29).toMillis());
    }

    @Test
    void every_state_is_there_to_look_at() {
        has(first, "released", card -> card.traveller().runs().isEmpty() && card.traveller().placement().isEmpty());
        has(first, "at the saw", card -> card.next() instanceof NextAction.Read read
                && read.step().station().equals("saw"));
        has(first, "waiting for the dimensional stamp", card -> awaits(card, "dimensional-inspection"));
        has(first, "waiting for the readiness stamp", card -> awaits(card, "readiness-inspection"));
        has(first, "waiting for the last stamp", card -> awaits(card, "record-review")
                && card.traveller().phase() == Phase.PASSED_IN);
        has(first, "about to be pickled", card -> card.next() instanceof NextAction.Begin begin
                && begin.step().station().equals("pickle-tank") && begin.gap().isPresent());
        has(first, "ready", card -> card.isReady(start));
        has(first, "apart with a rejected piece", card -> card.traveller().parent().isPresent()
                && card.traveller().nonconformances().getFirst().cause() == Cause.INSPECTION_REJECTED);
        has(first, "overrun", card -> card.traveller().openNonconformances().stream()
                .anyMatch(nc -> nc.cause() == Cause.HOLD_OVERRUN));
        has(first, "touched", card -> card.traveller().window() instanceof Window.Ended ended
                && ended.why() == WindowEnd.TOUCHED);
        has(first, "reworked", card -> !card.traveller().superseded().isEmpty() && !card.traveller().isInQuarantine()
                && card.traveller().nonconformances().stream().flatMap(nc -> nc.decision().stream())
                        .anyMatch(how -> how.disposition() == Disposition.REWORK));
        has(shop.bean(Travellers.class).ended(10), "closed", card -> card.traveller().phase() == Phase.CLOSED);
    }

    @Test
    void one_is_in_the_acid_and_one_window_is_nearly_used_up() {
        has(first, "in the acid or just over its time", card -> card.traveller().runs().values().stream()
                .anyMatch(run -> run.isHolding() && run.step().value().equals("acid-pickle")));
        has(first, "nearly used up", card -> card.traveller().window() instanceof Window.Open open
                && open.remaining(start).compareTo(Duration.ofMinutes(30)) < 0
                && open.remaining(start).compareTo(Duration.ofMinutes(10)) > 0);
    }

    @Test
    void refusals_and_corrections_are_in_the_record() {
        assertThat(record()).anyMatch(event -> event instanceof TravellerEvent.AttemptRefused refused
                && refused.rules().stream().anyMatch(rule -> rule.code().equals("wrong-bin-class")));
        assertThat(record()).anyMatch(TravellerEvent.ReadingCorrected.class::isInstance);
    }

    @Test
    void everything_recorded_is_marked_demo() {
        assertThat(shop.bean(Ledger.class).readAllAfter(0, ENTRIES_MAX)).isNotEmpty()
                .allSatisfy(entry -> assertThat(entry.json())
                        .contains("\"demo\":true").doesNotContain("\"demo\":false"));
    }

    @Test
    void a_rebuild_makes_the_same_tables() {
        assertThat(shop.bean(Rebuild.class).compare()).isEmpty();
    }

    @Test
    void a_second_start_keeps_everything_and_adds_no_second_past() {
        List<Entry> before = shop.bean(Ledger.class).readAllAfter(0, ENTRIES_MAX);
        List<TravellerId> labels = labels();
        shop.restart();
        assertThat(shop.bean(Ledger.class).readAllAfter(0, before.size())).isEqualTo(before);
        assertThat(labels()).isEqualTo(labels);
        assertThat(shop.bean(ShopClock.class).now()).isGreaterThan(start);
    }

    @ParameterizedTest
    @ValueSource(strings = {"TUBE", "FITTING", "FILLER"})
    void the_automatic_fabricator_takes_a_lot_of_each_procedure_from_release_to_closed(String procedure) {
        HeatId heat = procedure.equals("FITTING") ? DemoHeat.FITTING_BAR : DemoHeat.LEG_TUBE;
        TravellerId lot = shop.bean(Lots.class).releaseForTheBench(Today.MIXED,
                List.of(new Lots.Lot("HDF-9000-01", "Lot of a test", 3, heat, procedure))).getFirst();
        Story story = shop.bean(Story.class);
        story.advance(lot, new StepId("solvent-wipe"));
        assertThat(shop.bean(Travellers.class).find(lot).orElseThrow().next())
                .isInstanceOfSatisfying(NextAction.Begin.class, begin ->
                        assertThat(begin.step().id()).isEqualTo(new StepId("solvent-wipe")));
        story.finish(lot);
        Card end = shop.bean(Travellers.class).find(lot).orElseThrow();
        assertThat(end.traveller().phase()).isEqualTo(Phase.CLOSED);
        assertThat(end.traveller().nonconformances()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"TUBE", "FITTING", "FILLER"})
    void a_lot_released_now_goes_on_in_a_session_once_it_is_ready_for_the_lock(String procedure) {
        HeatId heat = procedure.equals("FITTING") ? DemoHeat.FITTING_BAR : DemoHeat.LEG_TUBE;
        TravellerId lot = shop.bean(Lots.class).release(Today.MIXED,
                List.of(new Lots.Lot("HDF-9000-02", "Lot of a session", 2, heat, procedure))).getFirst();
        shop.bean(Story.class).advance(lot, new StepId("pass-in"));
        Card ready = shop.bean(Travellers.class).find(lot).orElseThrow();
        assertThat(ready.procedure().ref().revision()).isEqualTo("C");
        assertThat(ready.next()).isInstanceOf(NextAction.AwaitSession.class);
        assertThat(ready.isReady(shop.bean(ShopClock.class).now())).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"TUBE", "FITTING", "FILLER"})
    void the_automatic_fabricator_takes_what_waits_for_the_chamber_through_a_session(String procedure) {
        HeatId heat = procedure.equals("FITTING") ? DemoHeat.FITTING_BAR : DemoHeat.LEG_TUBE;
        TravellerId lot = shop.bean(Lots.class).release(Today.MIXED,
                List.of(new Lots.Lot("HDF-9000-03", "Lot of a whole session", 2, heat, procedure))).getFirst();
        shop.bean(Story.class).finish(lot);
        Card end = shop.bean(Travellers.class).find(lot).orElseThrow();
        assertThat(end.traveller().phase()).isEqualTo(Phase.CLOSED);
        assertThat(end.traveller().nonconformances()).isEmpty();
        assertThat(shop.bean(Sessions.class).ofKit(Today.MIXED).getFirst().travellersPassedIn()).containsExactly(lot);
    }

    @Test
    void some_of_its_past_follows_the_revision_before_and_can_be_read() {
        assertThat(first).extracting(card -> card.procedure().ref().revision()).contains("B", "C");
        assertThat(shop.bean(ProcedureLibrary.class).current()).extracting(procedure -> procedure.ref().revision())
                .containsExactly("C", "C", "C");
    }

    @Test
    void the_greeting_names_every_badge_with_its_pin() {
        String words = DemoGreeting.words(10);
        assertThat(words).contains("DEMO SHOP", "invented data", "simulated clock \u00d710");
        for (DemoPerson person : DemoPerson.values()) {
            assertThat(words).contains(person.badge().value(), person.pin(), person.fullName());
        }
    }

    @Test
    void every_label_of_the_demo_can_be_typed_and_is_marked() {
        List<Label> labels = shop.bean(DemoLabels.class).all();
        assertThat(labels).extracting(label -> label.own().kind()).contains(LabelKind.values());
        assertThat(labels).allSatisfy(label -> {
            assertThat(label.demo()).isTrue();
            assertThat(ScanParser.standard().parse(RawScan.typed(label.own().printed()), TODAY)).isEqualTo(label.own());
        });
    }

    @Test
    void a_shop_of_one_s_own_starts_with_nobody_and_nothing() {
        try (ShopServer empty = ShopServer.empty()) {
            assertThatThrownBy(() -> empty.bean(DemoGreeting.class)).isInstanceOf(NoSuchBeanDefinitionException.class);
            assertThatThrownBy(() -> empty.bean(DemoRoute.class)).isInstanceOf(NoSuchBeanDefinitionException.class);
            assertThatThrownBy(() -> empty.bean(DemoClock.class)).isInstanceOf(NoSuchBeanDefinitionException.class);
            assertThat(empty.bean(Ledger.class).readAllAfter(0, 10)).isEmpty();
            assertThat(empty.bean(FirstRun.class).isNeeded()).isTrue();
            assertThat(empty.bean(People.class).all()).isEmpty();
        }
    }

    private static List<TravellerId> labels() {
        return shop.bean(Travellers.class).notEnded().stream().map(Card::id).toList();
    }

    private static List<TravellerEvent> record() {
        Travellers travellers = shop.bean(Travellers.class);
        return Stream.concat(travellers.notEnded().stream(), travellers.ended(10).stream())
                .map(Card::id).map((TravellerId id) -> travellers.record(id)).flatMap(List::stream)
                .map(recorded -> recorded.event()).toList();
    }

    private static boolean awaits(Card card, String step) {
        return card.next() instanceof NextAction.AwaitStamp await && await.step().id().value().equals(step);
    }

    private static void has(List<Card> cards, String what, Predicate<Card> wanted) {
        assertThat(cards).as(what).anyMatch(wanted);
    }
}
