package brightseam.device;

import static brightseam.device.SampleMeters.LEAD;
import static brightseam.device.SampleMeters.OXYGEN;
import static brightseam.device.SampleMeters.terms;
import static brightseam.kernel.Samples.origin;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MeterDeciderTest {

    private static final Origin ORIGIN = origin(0);
    private static final MeterFacts KNOWN = new MeterFacts(true, true);
    private static final Feed HTTP = new Feed.Http();
    private static final Feed TYPED = new Feed.Typed(Duration.ofMinutes(2));

    private static Optional<MeterRecord> given(MeterCommand... commands) {
        Optional<MeterRecord> state = Optional.empty();
        for (MeterCommand command : commands) {
            var accepted = (Decision.Accepted<MeterEvent>) MeterDecider.decide(state, command, KNOWN);
            for (MeterEvent event : accepted.events()) {
                state = Optional.of(MeterRecord.evolve(state, event));
            }
        }
        return state;
    }

    private static MeterCommand register(Feed feed) {
        return new MeterCommand.RegisterMeter(OXYGEN, terms(feed), ORIGIN, LEAD);
    }

    private static MeterCommand type(String value) {
        return new MeterCommand.TypeReading(OXYGEN, new BigDecimal(value), origin(30));
    }

    private static void refuses(
            Optional<MeterRecord> given, MeterCommand when, MeterFacts facts, MeterRefusal... then) {
        assertEquals(Decision.<MeterEvent>refused(List.of(then)), MeterDecider.decide(given, when, facts));
    }

    @Test
    void a_meter_is_a_gauge_at_a_station_and_registered_once_by_lead_or_administrator() {
        assertEquals(SampleMeters.oxygen(HTTP), given(register(HTTP)).orElseThrow().meter());
        Signer fabricator = SampleMeters.signer(Role.FABRICATOR);
        refuses(Optional.empty(), new MeterCommand.RegisterMeter(OXYGEN, terms(HTTP), ORIGIN, fabricator),
                new MeterFacts(false, false),
                new MeterRefusal.MeterRoleMissing(fabricator.badge(), List.of(Role.ADMINISTRATOR, Role.LEAD)),
                new MeterRefusal.MeterIsNoGauge(OXYGEN),
                new MeterRefusal.MeterStationUnknown(OXYGEN, new StationId("S-CHAMBER-1")));
        refuses(given(register(HTTP)), register(HTTP), KNOWN, new MeterRefusal.MeterAlreadyRegistered(OXYGEN));
        refuses(Optional.empty(), type("3"), KNOWN, new MeterRefusal.MeterUnknown(OXYGEN));
    }

    @Test
    void only_a_device_that_sends_by_itself_gets_a_token() {
        MeterCommand token = new MeterCommand.MakeToken(OXYGEN, ORIGIN, LEAD);
        assertEquals(Optional.of(ORIGIN.at()), given(register(HTTP), token).orElseThrow().token());
        refuses(given(register(TYPED)), token, KNOWN, new MeterRefusal.MeterHasNoToken(OXYGEN));
    }

    @Test
    void a_typed_reading_lies_within_the_range_and_sets_when_the_next_is_due() {
        MeterRecord typed = given(register(TYPED), type("12.5")).orElseThrow();
        assertEquals(Optional.of(origin(30 + 120).at()), typed.nextTypedDue());
        assertEquals(Optional.empty(), given(register(TYPED)).orElseThrow().nextTypedDue());
        assertInstanceOf(Decision.Accepted.class, MeterDecider.decide(given(register(TYPED)), type("1000"), KNOWN));
        refuses(given(register(TYPED)), type("1000.1"), KNOWN, new MeterRefusal.ReadingOutsideRange(OXYGEN,
                new BigDecimal("1000.1"), BigDecimal.ZERO, new BigDecimal("1000"), "ppm O2"));
        refuses(given(register(HTTP)), type("12"), KNOWN, new MeterRefusal.MeterIsNotTyped(OXYGEN));
    }

    @Test
    void a_meter_out_of_use_takes_no_reading_until_it_is_used_again() {
        MeterCommand out = new MeterCommand.TakeOutOfUse(OXYGEN, "cell spent", ORIGIN, LEAD);
        MeterCommand back = new MeterCommand.PutBackIntoUse(OXYGEN, ORIGIN, LEAD);
        refuses(given(register(TYPED), out), type("12"), KNOWN, new MeterRefusal.MeterOutOfUse(OXYGEN, "cell spent"));
        refuses(given(register(TYPED)), back, KNOWN, new MeterRefusal.MeterInUse(OXYGEN));
        refuses(given(register(TYPED), out), back, new MeterFacts(false, true),
                new MeterRefusal.MeterIsNoGauge(OXYGEN));
        assertEquals(true, given(register(TYPED), out, back).orElseThrow().isInUse());
    }

    @Test
    void what_cannot_be_a_meter_is_none() {
        Meter good = SampleMeters.oxygen(HTTP);
        assertThrows(IllegalArgumentException.class, () -> new Meter(good.id(), good.station(), good.place(),
                good.quantity(), 10, 10, 0.1, good.every(), good.responseTime(), HTTP));
        assertThrows(IllegalArgumentException.class, () -> new Meter(good.id(), good.station(), good.place(),
                good.quantity(), 0, 10, 0, good.every(), good.responseTime(), HTTP));
        assertThrows(IllegalArgumentException.class, () -> SampleMeters.point(0, 0, RegisterKind.INT16, "1"));
        assertThrows(IllegalArgumentException.class, () -> SampleMeters.point(502, 65_535, RegisterKind.INT32, "1"));
        assertThrows(IllegalArgumentException.class, () -> SampleMeters.point(502, 0, RegisterKind.INT32, "0"));
        assertThrows(IllegalArgumentException.class, () -> new ModbusPoint("a b", 502, 1, false, 0,
                RegisterKind.INT16, BigDecimal.ONE, BigDecimal.ZERO));
        assertThrows(IllegalArgumentException.class, () -> new FeedTerms(FeedTerms.Kind.MODBUS, Optional.empty(),
                Optional.empty()));
    }
}
