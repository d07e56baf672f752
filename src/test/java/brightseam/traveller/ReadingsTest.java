package brightseam.traveller;

import static java.time.Duration.ofMinutes;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.StepId;
import brightseam.traveller.TravellerEvent.*;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** Readings before and after a hold, their limits, repeats and corrections. */
class ReadingsTest {

    private static Shop dimensions() {
        return Shop.withLotAt("dimension").does(ask -> ask.start("dimension"));
    }

    @Test
    void a_bath_that_is_too_cold_is_read_again_and_nothing_is_lost() {
        Shop shop = Shop.withLotAt("degrease").does(ask -> ask.start("degrease"))
                .when(ask -> ask.beginHold("degrease")).thenRefused("reading-missing")
                .when(ask -> ask.read("degrease", "bath-temperature", "54.99")).thenEvents(ReadingTaken.class)
                .when(ask -> ask.beginHold("degrease")).thenRefused("not-fit-to-begin")
                .when(ask -> ask.read("degrease", "bath-temperature", "55")).thenEvents(ReadingTaken.class)
                .when(ask -> ask.read("degrease", "bath-temperature", "60")).thenRefused("reading-already-taken")
                .when(ask -> ask.beginHold("degrease")).thenEvents(HoldBegun.class);
        assertEquals(2, shop.traveller().run(new StepId("degrease")).orElseThrow().readings().size());
    }

    @Test
    void a_reading_before_the_hold_that_is_corrected_out_of_limits_only_stops_the_hold() {
        Shop.withLotAt("degrease").does(ask -> ask.start("degrease"))
                .does(ask -> ask.read("degrease", "bath-temperature", "60"))
                .when(ask -> ask.correct("degrease", "bath-temperature", "50", Commands.FABRICATOR))
                .thenEvents(ReadingCorrected.class)
                .when(ask -> ask.beginHold("degrease")).thenRefused("not-fit-to-begin")
                .when(ask -> ask.read("degrease", "bath-temperature", "57")).thenEvents(ReadingTaken.class);
    }

    @Test
    void corrected_out_of_limits_after_the_hold_began_it_opens_a_nonconformance() {
        Shop.withLotAt("degrease").does(ask -> ask.start("degrease"))
                .does(ask -> ask.read("degrease", "bath-temperature", "60")).does(ask -> ask.beginHold("degrease"))
                .when(ask -> ask.correct("degrease", "bath-temperature", "50", Commands.FABRICATOR))
                .thenEvents(ReadingCorrected.class, NonconformanceOpened.class);
    }

    @Test
    void a_reading_after_the_hold_waits_for_its_end() {
        Shop.withLotAt("di-rinse").when(ask -> ask.read("di-rinse", "conductivity", "1")).thenRefused("not-started")
                .does(ask -> ask.start("di-rinse"))
                .when(ask -> ask.read("di-rinse", "conductivity", "1")).thenRefused("hold-still-running")
                .passes(ofMinutes(1)).does(ask -> ask.endHold("di-rinse"))
                .when(ask -> ask.sign("di-rinse", Commands.FABRICATOR)).thenRefused("reading-missing")
                .when(ask -> ask.read("di-rinse", "conductivity", "5")).thenEvents(ReadingTaken.class);
    }

    @Test
    void a_reading_out_of_limits_opens_a_nonconformance_and_is_kept() {
        Shop shop = dimensions().when(ask -> ask.read("dimension", "diameter", "25.11"))
                .thenEvents(ReadingTaken.class, NonconformanceOpened.class)
                .when(ask -> ask.read("dimension", "diameter", "25.00")).thenRefused("reading-already-taken");
        assertEquals(Nonconformance.Cause.READING_OUT_OF_LIMITS, shop.lastOf(NonconformanceOpened.class).cause());
        assertTrue(shop.traveller().isInQuarantine());
    }

    @Test
    void a_repaired_piece_is_measured_again_before_the_stamp() {
        dimensions().does(ask -> ask.read("dimension", "diameter", "25.11"))
                .does(ask -> ask.read("dimension", "wall", "1.2"))
                .does(ask -> ask.decide(1, Disposition.REPAIR, Commands.INSPECTOR))
                .when(ask -> ask.stamp("dimension", Commands.INSPECTOR)).thenRefused("reading-missing")
                .when(ask -> ask.read("dimension", "wall", "1.15")).thenRefused("reading-already-taken")
                .when(ask -> ask.read("dimension", "diameter", "25.09")).thenEvents(ReadingTaken.class)
                .when(ask -> ask.stamp("dimension", Commands.INSPECTOR)).thenEvents(StepStamped.class);
    }

    @Test
    void a_repair_that_did_not_help_opens_another_nonconformance() {
        dimensions().does(ask -> ask.read("dimension", "diameter", "25.11"))
                .does(ask -> ask.read("dimension", "wall", "1.2"))
                .does(ask -> ask.decide(1, Disposition.REPAIR, Commands.INSPECTOR))
                .when(ask -> ask.read("dimension", "diameter", "25.12"))
                .thenEvents(ReadingTaken.class, NonconformanceOpened.class)
                .does(ask -> ask.decide(2, Disposition.USE_AS_IS, Commands.INSPECTOR))
                .when(ask -> ask.stamp("dimension", Commands.INSPECTOR)).thenEvents(StepStamped.class);
    }

    @Test
    void used_as_it_is_the_value_stands() {
        dimensions().does(ask -> ask.read("dimension", "diameter", "25.11"))
                .does(ask -> ask.read("dimension", "wall", "1.2"))
                .does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR))
                .when(ask -> ask.read("dimension", "diameter", "25.00")).thenRefused("reading-already-taken")
                .when(ask -> ask.stamp("dimension", Commands.INSPECTOR)).thenEvents(StepStamped.class);
    }

    @Test
    void a_failed_look_opens_a_nonconformance_and_only_yes_or_no_is_an_answer() {
        Shop.withLotAt("water-break").does(ask -> ask.start("water-break"))
                .when(ask -> ask.read("water-break", "film-whole", "2")).thenRefused("reading-malformed")
                .when(ask -> ask.read("water-break", "film-whole", "0"))
                .thenEvents(ReadingTaken.class, NonconformanceOpened.class);
    }

    @Test
    void numbers_that_no_key_pad_offers_are_refused() {
        dimensions().when(ask -> ask.read("dimension", "diameter", "25.001")).thenRefused("reading-malformed")
                .when(ask -> ask.read("dimension", "diameter", "1E+400000000")).thenRefused("reading-malformed")
                .when(ask -> ask.read("dimension", "diameter", "1234567890")).thenRefused("reading-malformed")
                .when(ask -> ask.read("dimension", "diameter", "25.0000")).thenEvents(ReadingTaken.class);
    }

    @Test
    void a_reading_that_the_step_does_not_have_is_refused() {
        dimensions().when(ask -> ask.read("dimension", "colour", "1")).thenRefused("unknown-reading");
    }

    @Test
    void a_correction_keeps_the_old_value_and_says_who_and_why() {
        Shop shop = dimensions().does(ask -> ask.read("dimension", "diameter", "24.95"))
                .when(ask -> ask.correct("dimension", "diameter", "24.96", Commands.FABRICATOR))
                .thenEvents(ReadingCorrected.class);
        Reading reading = shop.traveller().run(new StepId("dimension")).orElseThrow().reading("diameter").orElseThrow();
        assertEquals(new BigDecimal("24.95"), reading.value());
        assertEquals(new BigDecimal("24.96"), reading.current());
        assertEquals("mistyped", reading.correction().orElseThrow().reason());
        assertEquals(Commands.FABRICATOR.badge(), reading.correction().orElseThrow().by());
    }

    @Test
    void a_signed_step_is_corrected_too_and_quarantines_where_the_limit_is_broken() {
        Shop shop = Shop.withLotAt("dimension")
                .when(ask -> ask.correct("cut", "length", "101", Commands.LEAD))
                .thenEvents(ReadingCorrected.class, NonconformanceOpened.class)
                .when(ask -> ask.start("dimension")).thenRefused("in-quarantine");
        assertTrue(shop.traveller().isSigned(new StepId("cut")));
    }

    @Test
    void corrections_are_refused_to_others_without_a_change_or_of_nothing() {
        dimensions().does(ask -> ask.read("dimension", "diameter", "24.95"))
                .when(ask -> ask.correct("dimension", "diameter", "25", Commands.SECOND)).thenRefused("role-missing")
                .when(ask -> ask.correct("dimension", "diameter", "24.950", Commands.LEAD))
                .thenRefused("nothing-to-correct")
                .when(ask -> ask.correct("dimension", "wall", "1.2", Commands.LEAD)).thenRefused("reading-missing")
                .when(ask -> ask.correct("dimension", "diameter", "24.9501", Commands.LEAD))
                .thenRefused("reading-malformed");
    }
}
