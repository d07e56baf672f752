package brightseam.traveller;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.ContactKind;
import brightseam.kernel.StepId;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import brightseam.traveller.TravellerEvent.*;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What touches the pieces is scanned before it does, and gloves that touched something else come off. */
class HandsTest {

    private static final Use NEW_GLOVES = new Use(ContactKind.GLOVES, "clean-room", true);

    private static List<Use> asked(Shop shop, String step) {
        return Uses.asked(shop.traveller(), shop.procedure, shop.procedure.step(new StepId(step)));
    }

    @Test
    void a_step_does_not_begin_before_everything_that_it_asks_for_is_scanned() {
        Contact gloves = Commands.contact(ContactKind.GLOVES, "clean-room");
        Shop shop = Shop.withLotAt("wipe")
                .when(ask -> ask.startTouching(List.of(), "wipe"))
                .thenRefused("contact-not-scanned", "contact-not-scanned", "contact-not-scanned")
                .when(ask -> ask.startTouching(List.of(gloves), "wipe"))
                .thenRefused("contact-not-scanned", "contact-not-scanned")
                .when(ask -> ask.start("wipe")).thenEvents(StepStarted.class, ContactMade.class);
        assertEquals(List.of("clean-room", "lint-free-cloth", "acetone"),
                shop.lastOf(ContactMade.class).contacts().stream().map(Contact::type).toList());
    }

    @Test
    void gloves_of_another_type_are_not_the_gloves_that_are_asked_for() {
        Shop.withLotAt("bagging")
                .when(ask -> ask.startTouching(List.of(Commands.contact(ContactKind.GLOVES, "nitrile")), "bagging"))
                .thenRefused("contact-not-scanned");
    }

    @Test
    void pieces_are_cleaned_from_the_first_change_of_gloves_on() {
        var procedure = TestProcedures.tube();
        assertEquals(Surface.UNCLEANED, procedure.surface(new StepId("dry")));
        assertEquals(Surface.CLEANED, procedure.surface(new StepId("wipe")));
        assertEquals(Surface.CLEANED, procedure.surface(new StepId("bagging")));
    }

    @Test
    void gloves_that_touched_a_tool_come_off_and_the_pieces_stay_clean() {
        Shop shop = Shop.withLotAt("bagging")
                .when(ask -> ask.glovesSpent("a tool")).thenEvents(GlovesSpent.class);
        assertTrue(shop.traveller().window() instanceof Window.Open);
        assertEquals(List.of(NEW_GLOVES), asked(shop, "bagging"));
        shop.does(ask -> ask.start("bagging"));
        assertFalse(shop.traveller().glovesSpent());
    }

    @Test
    void a_step_is_not_signed_in_gloves_that_are_spent() {
        Shop shop = Shop.withLotAt("bagging").does(ask -> ask.start("bagging")).does(ask -> ask.close())
                .does(ask -> ask.glovesSpent("the tablet"))
                .when(ask -> ask.sign("bagging", Commands.FABRICATOR)).thenRefused("contact-not-scanned")
                .when(ask -> ask.changeGloves("acid gauntlets")).thenRefused("contact-not-scanned")
                .does(ask -> ask.changeGloves("clean-room"));
        shop.does(ask -> ask.sign("bagging", Commands.FABRICATOR));
    }

    @Test
    void a_touch_makes_the_gloves_spent_and_new_ones_are_asked_for_on_the_clean_side_alone() {
        Shop shop = Shop.withLotAt("bagging").does(ask -> ask.touch("bare hand"));
        assertTrue(shop.traveller().glovesSpent());
        assertEquals(List.of(), asked(shop, "degrease"));
        assertEquals(NEW_GLOVES, asked(shop.goesOnTo("wipe"), "wipe").getFirst());
        assertFalse(shop.goesOnTo("white-cloth").traveller().glovesSpent());
    }

    @Test
    void no_gloves_are_spent_before_clean_ones_are_on() {
        Shop.withLotAt("cut").when(ask -> ask.glovesSpent("a tool")).thenRefused("no-clean-gloves-on");
        Shop.withLotAt("bagging").when(ask -> ask.glovesSpent(" ")).thenRefused("reason-missing");
    }
}
