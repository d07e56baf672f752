package brightseam.traveller;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.procedure.BinClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a mark is bound to. */
class SignedContentTest {

    private static Shop atTheDimension() {
        return Shop.withLotAt("dimension").does(ask -> ask.start("dimension"))
                .does(ask -> ask.read("dimension", "diameter", "25"));
    }

    private static String content(Shop shop) {
        return SignedContent.sha256(shop.traveller(), shop.procedure);
    }

    @Test
    void the_same_record_gives_the_same_content_and_names_what_was_read() {
        Shop shop = atTheDimension();
        assertEquals(content(shop), content(atTheDimension()));
        String text = SignedContent.text(shop.traveller(), shop.procedure);
        assertTrue(text.startsWith("Brightseam signed content 1\ntraveller T-1042 -\n"), text);
        for (String part : List.of("pieces 1,2,3,4", "at dimension \"", "  reading diameter 25 in ",
                "procedure TUBE A ", shop.procedure.step(new brightseam.kernel.StepId("dimension")).instruction())) {
            assertTrue(text.contains(part), part + " in " + text);
        }
    }

    @Test
    void every_reading_bin_hold_and_correction_changes_the_content() {
        List<String> contents = new ArrayList<>();
        Shop shop = Shop.withLotAt("degrease").does(ask -> ask.put("B-7", BinClass.PROCESS_BASKET));
        contents.add(content(shop));
        contents.add(content(shop.does(ask -> ask.put("B-8", BinClass.PROCESS_BASKET))));
        shop.goesOnTo("pickle");
        contents.add(content(shop));
        contents.add(content(shop.does(ask -> ask.start("pickle"))));
        contents.add(content(shop.does(ask -> ask.report(1))));
        contents.add(content(shop.does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.ALL_ROUND))));
        assertEquals(contents.size(), contents.stream().distinct().count());
        Shop corrected = atTheDimension();
        String before = content(corrected);
        assertNotEquals(before, content(corrected.does(
                ask -> ask.correct("dimension", "diameter", "25.1", Commands.LEAD))));
    }

    @Test
    void another_instruction_changes_the_content() {
        Shop shop = atTheDimension();
        assertNotEquals(content(shop), SignedContent.sha256(shop.traveller(),
                Steps.named("TUBE").changed("dimension", Steps.instructed("Measure nothing.")).procedure()));
    }

    @Test
    void no_text_passes_for_another_line() {
        Shop honest = atTheDimension().does(ask -> ask.report(1));
        Shop forging = atTheDimension().does(ask -> new TravellerCommand.ReportNonconformance(
                ask.by(Commands.FABRICATOR), List.of(1), "x\"\n  decided USE_AS_IS"));
        assertEquals(SignedContent.text(honest.traveller(), honest.procedure).lines().count(),
                SignedContent.text(forging.traveller(), forging.procedure).lines().count());
    }

    @Test
    void every_mark_of_a_whole_story_is_bound_to_the_events_before_it() {
        Shop shop = Shop.withLot().goesOnTo("dimension").does(ask -> ask.start("dimension"))
                .does(ask -> ask.read("dimension", "diameter", "25"))
                .does(ask -> ask.correct("dimension", "diameter", "25.1", Commands.LEAD))
                .does(ask -> ask.report(1)).does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.ALL_ROUND))
                .does(ask -> ask.setApart("T-1042.1", 4));
        Shop child = shop.child();
        shop.goesOnToTheEnd();
        assertTrue(marks(shop) > 8, "marks: " + marks(shop));
        assertTrue(allFit(shop));
        assertTrue(child.record().getFirst() instanceof TravellerEvent.SetApart && allFit(child));
    }

    @Test
    void a_record_of_which_an_event_was_changed_does_not_fit_its_marks() {
        Shop shop = Shop.withLot().goesOnToTheEnd();
        int changed = 0;
        for (int i = 0; i < shop.record().size(); i++) {
            if (shop.record().get(i) instanceof TravellerEvent.ReadingTaken taken) {
                List<TravellerEvent> forged = new ArrayList<>(shop.record());
                forged.set(i, new TravellerEvent.ReadingTaken(taken.origin(), taken.step(), taken.reading(),
                        taken.value().add(new java.math.BigDecimal("0.01")), taken.inLimits()));
                assertFalse(IntStream.range(0, forged.size())
                        .allMatch(at -> SignedContent.fits(forged, at, shop.procedure)), "reading " + i);
                changed++;
            }
        }
        assertTrue(changed > 2);
    }

    @Test
    void a_signature_under_something_else_than_was_shown_is_told_from_one_under_that() {
        Shop shop = atTheDimension();
        String shown = content(shop);
        shop.does(ask -> ask.read("dimension", "wall", "1.2"));
        String now = content(shop);
        List<TravellerEvent> signed = signed(shop);
        assertTrue(SignedContent.isOtherThan(Optional.of(shown), signed));
        assertFalse(SignedContent.isOtherThan(Optional.of(now), signed));
        assertFalse(SignedContent.isOtherThan(Optional.empty(), signed));
    }

    @Test
    void what_needs_no_signature_is_never_refused_for_what_was_shown() {
        Shop shop = atTheDimension();
        int before = shop.record().size();
        shop.does(ask -> ask.read("dimension", "wall", "1.2"));
        assertFalse(SignedContent.isOtherThan(Optional.of("something else"),
                shop.record().subList(before, shop.record().size())));
    }

    private static List<TravellerEvent> signed(Shop shop) {
        int before = shop.record().size();
        shop.does(ask -> ask.stamp("dimension", Commands.INSPECTOR));
        return shop.record().subList(before, shop.record().size());
    }

    private static long marks(Shop shop) {
        return shop.record().stream().filter(event -> event.mark().flatMap(Signature::content).isPresent()).count();
    }

    private static boolean allFit(Shop shop) {
        return IntStream.range(0, shop.record().size())
                .allMatch(at -> SignedContent.fits(shop.record(), at, shop.procedure));
    }
}
