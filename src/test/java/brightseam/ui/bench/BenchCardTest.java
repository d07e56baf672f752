package brightseam.ui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.BinId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.SupplyId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Step;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import brightseam.procedure.Vocabulary;
import brightseam.supply.Standing;
import brightseam.supply.Supply;
import brightseam.traveller.Contact;
import brightseam.traveller.NextAction;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.shell.Card;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** What the card says at each of the guide's answers, on the shipped tube procedure. */
class BenchCardTest {

    private final LedLot lot = new LedLot("T-1042");

    private BenchCard card(NextAction next, MadeReady ready) {
        return new CardWriter(LedLot.VOCABULARY, ZoneOffset.UTC).write(load(), next, ready, lot.now());
    }

    private Load load() {
        return Load.around(lot.card(), Optional.empty(), List.of(lot.card()));
    }

    private <D extends Doing> D doing(Class<D> type, NextAction next) {
        return assertInstanceOf(type, card(next, MadeReady.NOTHING).doing());
    }

    private static Predicate<NextAction> at(String step, Class<? extends NextAction> action) {
        return next -> action.isInstance(next)
                && Load.stepOf(next).map(Step::id).filter(id -> id.value().equals(step)).isPresent();
    }

    @Test
    void a_new_lot_is_put_into_a_shop_bin() {
        NextAction next = lot.until(NextAction.PutInto.class::isInstance);
        BenchCard card = card(next, MadeReady.NOTHING);
        assertEquals("Step 10 · saw", card.line());
        assertEquals("T-1042 · 4 pieces · Leg tube · heat H-1", card.load());
        assertEquals("In no bin yet", card.where());
        assertEquals(List.of(BinClass.SHOP_BIN), doing(Doing.PutInto.class, next).classes());
        assertEquals(BenchCard.Standing.NOW, card.steps().getFirst().standing());
    }

    @Test
    void cautions_and_gloves_are_confirmed_before_the_station_is_asked_for() {
        NextAction next = lot.until(at("acid-pickle", NextAction.Begin.class));
        Doing.Start asks = doing(Doing.Start.class, next);
        assertEquals(List.of("Hydrofluoric acid", "Nitric acid and brown fumes"),
                asks.cautions().stream().map(Vocabulary.Caution::title).toList());
        assertTrue(asks.confirm().orElseThrow().startsWith("Cautions read, gloves on: "));
        Doing.Start confirmed = assertInstanceOf(Doing.Start.class, card(next, MadeReady.NOTHING.confirm()).doing());
        assertTrue(confirmed.confirm().isEmpty() && confirmed.cautions().isEmpty());
        assertEquals("Scan the label of the pickle tank to begin.", confirmed.ask());
    }

    @Test
    void what_touches_the_pieces_is_listed_with_a_tick_once_it_is_scanned() {
        NextAction next = lot.until(at("solvent-wipe", NextAction.Begin.class));
        MadeReady ready = MadeReady.NOTHING.confirm();
        Doing.Start asks = assertInstanceOf(Doing.Start.class, card(next, ready).doing());
        assertEquals("Scan what touches the pieces, then the wipe bench.", asks.ask());
        assertEquals(List.of("Powder-free nitrile gloves, a new pair", "Lint-free cloth", "Acetone, reagent grade"),
                asks.scans().stream().map(Doing.Scan::name).toList());
        assertTrue(asks.scans().stream().allMatch(scan -> scan.ticked().isEmpty()));
        for (Use use : List.copyOf(load().asked(Load.stepOf(next).orElseThrow()))) {
            ready = ready.with(supply(use.kind(), use.type()));
        }
        Doing.Start complete = assertInstanceOf(Doing.Start.class, card(next, ready).doing());
        assertEquals("Scan the label of the wipe bench to begin.", complete.ask());
        assertTrue(complete.scans().stream().allMatch(scan -> scan.ticked().equals(Optional.of("G-1, LOT-1"))));
    }

    @Test
    void gloves_that_are_scanned_are_not_confirmed_by_touch_too() {
        NextAction wipe = lot.until(at("solvent-wipe", NextAction.Begin.class));
        assertEquals(Optional.of("Cautions read"), doing(Doing.Start.class, wipe).confirm());
        assertTrue(MadeReady.NOTHING.with(supply(ContactKind.GLOVES, "clean-nitrile")).glovesOn());
        assertTrue(!MadeReady.NOTHING.with(supply(ContactKind.SOLVENT, "acetone")).glovesOn());
    }

    @Test
    void a_second_scan_of_a_type_takes_the_place_of_the_first() {
        Supply first = supply(ContactKind.SOLVENT, "acetone");
        Supply second = new Supply(new SupplyId("G-2"), first.kind(), first.type(), first.title(), "LOT-2",
                first.maker(), first.lastDay(), first.mayTouch(), first.standing(), first.contamination());
        assertEquals(List.of(second.id()), MadeReady.NOTHING.with(first).with(second).labels());
    }

    @Test
    void gloves_spent_in_the_middle_of_a_step_are_said_on_the_card_until_new_ones_are_on() {
        lot.until(at("white-cloth-check", NextAction.Read.class));
        lot.does(new TravellerCommand.ReportGlovesSpent(lot.origin(), "Tablet"));
        assertTrue(card(lot.card().next(), MadeReady.NOTHING).gloves().orElseThrow().contains("Put on new ones"));
        lot.does(new TravellerCommand.ChangeGloves(lot.origin(),
                new Contact(ContactKind.GLOVES, "white-cotton", "G-1", "LOT-1"), List.of()));
        assertTrue(card(lot.card().next(), MadeReady.NOTHING).gloves().isEmpty());
    }

    private static Supply supply(ContactKind kind, String type) {
        return new Supply(new SupplyId("G-1"), kind, type, "Of the demo", "LOT-1", "Somebody", Optional.empty(),
                Set.of(Surface.values()), Standing.OPENED, Optional.empty());
    }

    @Test
    void a_reading_shows_unit_and_limits_and_what_was_not_in_order_before() {
        Doing.Reading first = doing(Doing.Reading.class, lot.until(at("acid-pickle", NextAction.Read.class)));
        assertEquals("20 to 49\u00a0°C", first.limits());
        assertTrue(first.again().isEmpty());
        lot.does(new TravellerCommand.TakeReading(lot.origin(), new brightseam.kernel.StepId("acid-pickle"),
                "bath-temperature", new BigDecimal("61")));
        Doing.Reading second = doing(Doing.Reading.class, lot.card().next());
        assertTrue(second.again().orElseThrow().contains("61\u00a0°C"));
    }

    @Test
    void a_hold_begins_and_runs_with_words_for_both_ends_and_the_step_behind_it() {
        assertEquals("The clock starts now", doing(Doing.BeginHold.class,
                lot.until(at("acid-pickle", NextAction.BeginHold.class))).done());
        lot.follow(lot.card().next());
        Doing.Holding holding = doing(Doing.Holding.class, lot.card().next());
        assertEquals("Lift the basket out. Then rinse off the acid within 30 s.", holding.atMinimum());
        assertEquals("Lifted out", holding.done());
        assertEquals(lot.now().plus(Duration.ofSeconds(60)), holding.earliest());
    }

    @Test
    void a_running_gap_hurries_to_the_next_step() {
        lot.until(at("acid-pickle", NextAction.Holding.class));
        lot.follow(lot.card().next());
        BenchCard.Hurry hurry = card(lot.card().next(), MadeReady.NOTHING).hurry().orElseThrow();
        assertEquals("90 Rinse off the acid", hurry.next());
        assertTrue(!hurry.passedOver());
    }

    @Test
    void what_is_signed_is_said_in_full() {
        Doing.Sign sign = doing(Doing.Sign.class, lot.until(at("acid-pickle", NextAction.Sign.class)));
        assertEquals("I did this step as written.", sign.meaning());
        assertTrue(sign.lines().contains("Held 1 min, limits 1 min to 5 min"), sign.lines()::toString);
        assertTrue(sign.lines().contains("Bath temperature: 49\u00a0°C"), sign.lines()::toString);
    }

    @Test
    void a_bag_is_sealed_and_the_window_is_said() {
        NextAction next = lot.until(NextAction.CloseBin.class::isInstance);
        assertEquals("Sealed", doing(Doing.Close.class, next).done());
        assertTrue(card(next, MadeReady.NOTHING).window().orElseThrow().startsWith("Clean until "));
    }

    @Test
    void an_inspection_waits_for_a_stamp() {
        Doing.Wait wait = doing(Doing.Wait.class, lot.until(NextAction.AwaitStamp.class::isInstance));
        assertEquals("Waits for a stamp", wait.word());
    }

    @Test
    void a_stopped_lot_names_its_nonconformance() {
        lot.until(NextAction.Begin.class::isInstance);
        lot.does(new TravellerCommand.ReportNonconformance(lot.origin(), List.of(2), "Dent near the end"));
        BenchCard card = card(lot.card().next(), MadeReady.NOTHING);
        assertEquals("In quarantine", card.title());
        assertTrue(assertInstanceOf(Doing.Wait.class, card.doing()).lines().getFirst().contains("Dent near the end"));
        assertEquals(BenchCard.Standing.STOPPED, card.steps().getFirst().standing());
    }

    @Test
    void a_lot_that_is_ready_for_the_lock_is_sent_to_the_session() {
        Doing.Wait wait = doing(Doing.Wait.class, lot.until(at("pass-in", NextAction.AwaitSession.class)));
        assertEquals("Goes on in the chamber's session", wait.word());
        assertTrue(wait.lines().getFirst().startsWith("Bring the pieces to the chamber."));
        assertTrue(wait.lines().getLast().startsWith("The pieces are in B-"));
    }

    @Test
    void in_the_chamber_nothing_is_done_at_the_bench() {
        Doing.Wait wait = doing(Doing.Wait.class, lot.until(at("weld", NextAction.AwaitSession.class)));
        assertEquals("Weld is begun, watched and signed on the session's screen. Nothing is done here.",
                wait.lines().getFirst());
        assertEquals(1, wait.lines().size());
    }

    @Test
    void a_closed_lot_has_nothing_left_to_do() {
        lot.until(at("record-review", NextAction.AwaitStamp.class));
        lot.follow(lot.card().next());
        assertEquals("Closed", doing(Doing.Wait.class, lot.card().next()).word());
    }

    @Test
    void lots_at_different_steps_in_one_basket_are_told_apart() {
        lot.until(at("acid-pickle", NextAction.Begin.class));
        LedLot mate = new LedLot("T-1043");
        mate.until(at("acid-pickle", NextAction.Begin.class));
        LedLot ahead = new LedLot("T-1044");
        ahead.until(at("acid-pickle", NextAction.BeginHold.class));
        List<Card> inside = List.of(ahead.card(), mate.card(), lot.card());
        Load load = Load.in(new BinId("B-1"), inside).orElseThrow();
        assertEquals(List.of("T-1042", "T-1043"), load.ids().stream().map(Object::toString).toList());
        assertEquals(List.of("T-1044"), Load.around(ahead.card(), Optional.empty(), inside).ids().stream()
                .map(Object::toString).toList());
        List<String> apart = new CardWriter(LedLot.VOCABULARY, ZoneOffset.UTC)
                .write(load, load.first().next(), MadeReady.NOTHING, lot.now()).apart();
        assertTrue(apart.getFirst().startsWith("T-1044 stands at step 80, Acid pickle. It is not part of this load"));
        assertTrue(Load.in(new BinId("B-2"), List.of()).isEmpty());
    }
}
