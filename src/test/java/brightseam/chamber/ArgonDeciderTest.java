package brightseam.chamber;

import static brightseam.chamber.Gear.BUNDLE;
import static brightseam.chamber.Gear.FABRICATOR;
import static brightseam.chamber.Gear.at;
import static brightseam.chamber.Gear.bundle;
import static brightseam.chamber.Gear.chamber;
import static brightseam.chamber.Gear.codes;
import static brightseam.chamber.Gear.decimal;
import static brightseam.chamber.Gear.dewar;
import static brightseam.chamber.Gear.leaking;
import static brightseam.kernel.Samples.ORIGIN;
import static brightseam.kernel.Samples.origin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.Decision;
import brightseam.kernel.StationId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ArgonDeciderTest {

    private static List<String> refusals(ArgonSource source, ArgonCommand command) {
        return codes(ArgonDecider.decide(Optional.of(source), command));
    }

    private static ArgonSource after(ArgonSource source, ArgonCommand command) {
        Decision.Accepted<ArgonEvent> accepted =
                (Decision.Accepted<ArgonEvent>) ArgonDecider.decide(Optional.of(source), command);
        return ArgonSource.evolve(Optional.of(source), accepted.events().getFirst());
    }

    private static ArgonCommand connect(ArgonSource source, Chamber chamber) {
        return new ArgonCommand.Connect(source.id(), chamber, origin(60), FABRICATOR);
    }

    private static ArgonCommand read(ArgonSource source, ArgonReading reading, boolean corrects) {
        return new ArgonCommand.EnterReading(source.id(), reading, corrects, origin(120));
    }

    private static ArgonSource with(ArgonSource source, String oxygenPpm, String moisturePpm) {
        return new ArgonSource(source.id(), source.vessel(),
                new ArgonPurity(decimal(oxygenPpm), decimal(moisturePpm), "C-1"), source.last(), source.connectedTo(),
                source.standing());
    }

    @Test
    void a_full_source_of_good_gas_is_connected_and_comes_off_again() {
        ArgonSource on = after(bundle("180"), connect(bundle("180"), chamber()));
        assertThat(on.connectedTo()).contains(Gear.CHAMBER);
        assertThat(after(on, new ArgonCommand.Disconnect(BUNDLE, chamber(BUNDLE), ORIGIN, FABRICATOR)).connectedTo())
                .isEmpty();
        assertThat(refusals(bundle("180"), new ArgonCommand.Disconnect(BUNDLE, chamber(), ORIGIN, FABRICATOR)))
                .containsExactly("argon-not-connected-here");
    }

    @Test
    void a_source_at_its_rest_or_never_read_is_not_connected() {
        assertThat(refusals(bundle("5"), connect(bundle("5"), chamber()))).containsExactly("argon-at-rest");
        assertThat(refusals(bundle("5.5"), connect(bundle("5.5"), chamber()))).isEmpty();
        assertThat(refusals(dewar("4"), connect(dewar("4"), chamber()))).containsExactly("argon-at-rest");
        ArgonSource unread = new ArgonSource(BUNDLE, bundle("1").vessel(), Gear.PURE, Optional.empty(),
                Optional.empty(), ArgonSource.Standing.IN_USE);
        assertThat(refusals(unread, connect(unread, chamber()))).containsExactly("argon-never-read");
    }

    @Test
    void a_dewar_that_boiled_off_to_its_rest_is_not_connected() {
        ArgonSource dewar = dewar("9");
        ArgonCommand late = new ArgonCommand.Connect(
                dewar.id(), chamber(), origin(3 * 24 * 3600), FABRICATOR);
        assertThat(refusals(dewar, connect(dewar, chamber()))).isEmpty();
        assertThat(refusals(dewar, late)).containsExactly("argon-at-rest");
    }

    /** 8 L/min of 2 ppm gas and 0.001 L/min of air settle at (8 * 2 + 0.001 * 209460) / 8.001 = 28.2 ppm. */
    @Test
    void gas_with_which_the_chamber_would_settle_above_its_limit_is_not_connected() {
        assertThat(refusals(bundle("180"), connect(bundle("180"), leaking(chamber(), "0.001")))).isEmpty();
        assertThat(refusals(bundle("180"), connect(bundle("180"), leaking(chamber(), "0.0011"))))
                .containsExactly("argon-too-impure");
        ArgonSource trade = with(bundle("180"), "30", "3");
        assertThat(refusals(trade, connect(trade, chamber()))).containsExactly("argon-too-impure");
        ArgonSource wet = with(bundle("180"), "2", "40");
        assertThat(refusals(wet, connect(wet, chamber()))).containsExactly("argon-too-moist");
    }

    @Test
    void a_source_that_feeds_another_chamber_stays_there() {
        ArgonSource elsewhere = ArgonSource.evolve(Optional.of(bundle("180")),
                new ArgonEvent.Connected(ORIGIN, BUNDLE, new StationId("S-CHAMBER-2"), FABRICATOR));
        assertThat(refusals(elsewhere, connect(elsewhere, chamber()))).containsExactly("argon-connected-elsewhere");
        assertThat(refusals(elsewhere, new ArgonCommand.DeclareEmpty(BUNDLE, ORIGIN)))
                .containsExactly("argon-still-connected");
        assertThat(refusals(elsewhere, new ArgonCommand.Retire(BUNDLE, "valve leaks", ORIGIN)))
                .containsExactly("argon-still-connected");
    }

    @Test
    void what_is_empty_or_gone_is_not_connected() {
        ArgonSource empty = after(bundle("8"), new ArgonCommand.DeclareEmpty(BUNDLE, ORIGIN));
        assertThat(refusals(empty, connect(empty, chamber()))).containsExactly("argon-empty");
        ArgonSource retired = after(empty, new ArgonCommand.Retire(BUNDLE, "back to the supplier", ORIGIN));
        assertThat(refusals(retired, connect(retired, chamber()))).containsExactly("argon-retired");
        assertThat(refusals(retired, read(retired, ArgonReading.pressure(at(60), decimal("1"), decimal("15")), false)))
                .containsExactly("argon-retired");
    }

    @Test
    void a_reading_is_of_the_vessel_s_form_in_order_and_does_not_rise() {
        ArgonSource source = bundle("150");
        assertThat(refusals(source, read(source, ArgonReading.level(at(60), decimal("50")), false)))
                .containsExactly("argon-reading-of-another-form");
        assertThat(refusals(source, read(source, ArgonReading.pressure(at(600), decimal("140"), decimal("15")), false)))
                .containsExactly("argon-reading-out-of-order");
        ArgonReading more = ArgonReading.pressure(at(60), decimal("190"), decimal("15"));
        assertThat(refusals(source, read(source, more, false))).containsExactly("argon-reading-rises");
        assertThat(after(source, read(source, more, true)).last()).contains(more);
    }

    @Test
    void a_wall_that_got_warmer_is_no_refill() {
        ArgonSource cold = bundle("150");
        ArgonReading warm = ArgonReading.pressure(at(60), decimal("163"), decimal("35"));
        assertThat(refusals(cold, read(cold, warm, false))).isEmpty();
    }

    @Test
    void a_delivery_is_one_and_its_reading_is_of_its_form() {
        ArgonVessel vessel = bundle("1").vessel();
        assertThat(codes(ArgonDecider.decide(Optional.empty(), new ArgonCommand.Deliver(BUNDLE, vessel, Gear.PURE,
                Optional.of(ArgonReading.level(at(0), decimal("90"))), ORIGIN))))
                .containsExactly("argon-reading-of-another-form");
        assertThat(refusals(bundle("180"), new ArgonCommand.Deliver(
                BUNDLE, vessel, Gear.PURE, Optional.empty(), ORIGIN))).containsExactly("argon-already-delivered");
        assertThat(codes(ArgonDecider.decide(Optional.empty(), new ArgonCommand.DeclareEmpty(BUNDLE, ORIGIN))))
                .containsExactly("argon-unknown");
    }

    @Test
    void a_reading_is_a_pressure_with_its_temperature_or_a_level() {
        assertThatThrownBy(() -> new ArgonReading(at(0), Optional.of(decimal("100")), Optional.empty(),
                Optional.empty(), Optional.empty())).hasMessageContaining("reading");
        assertThatThrownBy(() -> ArgonReading.level(at(0), decimal("101"))).hasMessageContaining("level");
        assertThatThrownBy(() -> ArgonVessel.dewar(decimal("0"), decimal("2"))).hasMessageContaining("volume");
    }
}
