package brightseam.traveller;

import static brightseam.traveller.Steps.gap;
import static brightseam.traveller.Steps.held;
import static brightseam.traveller.Steps.mixed;
import static brightseam.traveller.Steps.read;
import static brightseam.traveller.Steps.worn;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.BinId;
import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Mix;
import brightseam.procedure.Procedure;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What only a load can break. */
class LoadRulesTest {

    private static final StepId PICKLE = new StepId("pickle");
    private static final BinId BASKET = new BinId("B-9");
    private final Procedure tube = TestProcedures.tube();

    @Test
    void travellers_of_two_procedures_go_together_where_their_limits_meet() {
        Procedure other = Steps.named("FITTING").changed("pickle", held(90, 120)).procedure();
        assertEquals(List.of(), together(at("pickle", "T-1", tube, "9"), at("pickle", "T-2", other, "9")));
    }

    @Test
    void holds_that_do_not_meet_name_both_and_who_has_to_leave() {
        Procedure slow = Steps.named("PLATE").changed("pickle", held(200, 400)).procedure();
        LoadRefusal.HoldsDoNotMeet refusal = assertInstanceOf(LoadRefusal.HoldsDoNotMeet.class, together(
                at("pickle", "T-1", tube, "9"), at("pickle", "T-2", slow, "9"), at("pickle", "T-3", tube, "9"))
                .getFirst());
        assertEquals(new LoadRefusal.HoldsDoNotMeet(PICKLE, id("T-2"), Duration.ofSeconds(200), id("T-1"),
                Duration.ofSeconds(180), List.of(id("T-2"))), refusal);
    }

    @Test
    void readings_and_gloves_that_do_not_meet_are_refused_in_one_answer() {
        Procedure other = Steps.named("FITTING").changed("pickle", read("50", "60", 1))
                .changed("pickle", worn("nitrile")).procedure();
        assertEquals(List.of("load-readings-do-not-meet", "load-gloves-differ"),
                codes(together(at("pickle", "T-1", tube, "9"), at("pickle", "T-2", other, "9"))));
    }

    @Test
    void grades_are_mixed_where_no_procedure_forbids_it() {
        Procedure strict = Steps.named("FITTING").changed("pickle", mixed(Mix.SAME_GRADE)).procedure();
        assertEquals(List.of(), together(at("pickle", "T-1", tube, "9"), at("pickle", "T-2", tube, "2")));
        assertEquals(List.of(new LoadRefusal.GradesMixed(PICKLE, List.of("2", "9"), List.of(id("T-3")))),
                together(at("pickle", "T-1", tube, "9"), at("pickle", "T-2", tube, "2"),
                        at("pickle", "T-3", strict, "9")));
        assertEquals(List.of(), together(at("pickle", "T-1", strict, "9"), at("pickle", "T-2", strict, "9")));
    }

    @Test
    void what_a_short_gap_hurries_into_has_to_fit_before_the_acid() {
        Procedure other = Steps.named("FITTING").changed("acid-rinse", worn("nitrile")).procedure();
        assertEquals(List.of(), together(at("pickle", "T-1", tube, "9"), at("pickle", "T-2", other, "9")));
        Procedure third = Steps.named("PLATE").changed("acid-rinse", worn("acid gauntlets")).procedure();
        assertEquals(List.of(new LoadRefusal.GlovesDiffer(new StepId("acid-rinse"),
                        List.of("acid gauntlets", "nitrile"), List.of(id("T-3")))),
                together(at("pickle", "T-2", other, "9"), at("pickle", "T-3", third, "9")));
    }

    @Test
    void ways_that_part_behind_a_short_gap_part_before_it() {
        Procedure other = Steps.named("FITTING").without("acid-rinse").procedure();
        assertEquals(List.of(new LoadRefusal.WaysPart(PICKLE, Duration.ofSeconds(60), List.of(id("T-2")))),
                together(at("pickle", "T-1", tube, "9"), at("pickle", "T-2", other, "9")));
        Procedure patient = Steps.named("PLATE").without("acid-rinse").changed("pickle", gap(600)).procedure();
        Procedure alike = Steps.named("ROD").changed("pickle", gap(600)).procedure();
        assertEquals(List.of(), together(at("pickle", "T-1", patient, "9"), at("pickle", "T-2", alike, "9")));
    }

    @Test
    void steps_that_only_share_a_name_do_not_go_together() {
        Procedure other = Steps.named("FITTING").changed("pickle", step -> TestProcedures.altered(
                step, step.bins(), step.signedBy(), List.of())).procedure();
        assertEquals(List.of(new LoadRefusal.StepsDiffer(PICKLE, List.of(id("T-2")))),
                together(at("pickle", "T-1", tube, "9"), at("pickle", "T-2", other, "9")));
    }

    @Test
    void what_lies_in_the_basket_and_stands_elsewhere_is_named() {
        LoadMember behind = at("degrease", "T-2", tube, "9");
        assertEquals(List.of(new LoadRefusal.LeftInBasket(BASKET, id("T-2"), 30, "degrease", PICKLE)),
                LoadRules.together(PICKLE, List.of(at("pickle", "T-1", tube, "9")), List.of(behind)));
    }

    @Test
    void nothing_holds_up_what_must_be_rinsed() {
        Shop dripping = inAcid().passes(Duration.ofMinutes(2)).does(ask -> ask.endHold("pickle"));
        LoadMember wet = new LoadMember(dripping.traveller(), tube, "9");
        LoadMember left = at("degrease", "T-2", tube, "2");
        assertEquals(List.of(), LoadRules.together(new StepId("acid-rinse"), List.of(wet), List.of(left)));
    }

    @Test
    void a_basket_takes_what_stands_at_the_same_step() {
        LoadMember inside = at("pickle", "T-1", tube, "9");
        Procedure other = Steps.named("FITTING").changed("pickle", held(90, 120)).procedure();
        assertEquals(List.of(), joining(at("pickle", "T-2", other, "9"), inside));
        assertEquals(List.of(new LoadRefusal.BasketAtAnotherStep(
                BASKET, id("T-1"), 50, "pickle", id("T-2"), 30, "degrease")),
                joining(at("degrease", "T-2", tube, "9"), inside));
    }

    @Test
    void nothing_joins_a_basket_in_its_bath() {
        LoadMember held = new LoadMember(inAcid().traveller(), tube, "9");
        assertEquals(List.of(new LoadRefusal.BasketHolds(BASKET, id("T-1042"), PICKLE)),
                joining(at("pickle", "T-2", tube, "9"), held));
    }

    @Test
    void what_waits_for_a_disposition_lies_together_and_not_with_the_rest() {
        LoadMember stopped = new LoadMember(basket("degrease").does(ask -> ask.report(1)).traveller(), tube, "9");
        LoadMember other = new LoadMember(basket("pickle").does(ask -> ask.report(1)).traveller(), tube, "9");
        assertEquals(List.of(), joining(other, stopped));
        assertEquals(List.of("basket-at-another-step"), codes(joining(stopped, at("degrease", "T-2", tube, "9"))));
        assertEquals(List.of("basket-at-another-step"), codes(joining(at("degrease", "T-2", tube, "9"), stopped)));
    }

    private static List<Refusal> joining(LoadMember coming, LoadMember inside) {
        return LoadRules.joining(BASKET, List.of(coming), List.of(inside));
    }

    private static List<Refusal> together(LoadMember... load) {
        return LoadRules.together(PICKLE, List.of(load), List.of());
    }

    private static List<String> codes(List<Refusal> refusals) {
        return refusals.stream().map(Refusal::code).toList();
    }

    private static TravellerId id(String label) {
        return new TravellerId(label);
    }

    private static Shop basket(String step) {
        return Shop.withLotAt(step).does(ask -> ask.put("B-9", BinClass.PROCESS_BASKET));
    }

    private static Shop inAcid() {
        return basket("pickle").does(ask -> ask.start("pickle"))
                .does(ask -> ask.read("pickle", "acid-temperature", "30")).does(ask -> ask.beginHold("pickle"));
    }

    /** A lot labelled {@code label} of {@code procedure} in the basket, standing at {@code step}. */
    private static LoadMember at(String step, String label, Procedure procedure, String grade) {
        Shop shop = new Shop(procedure).does(ask -> ask.release(label, 2, "9", false)).goesOnTo(step);
        return new LoadMember(shop.does(ask -> ask.put("B-9", BinClass.PROCESS_BASKET)).traveller(), procedure, grade);
    }
}
