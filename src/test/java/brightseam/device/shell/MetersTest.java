package brightseam.device.shell;

import static brightseam.device.SampleMeters.CHAMBER;
import static brightseam.device.SampleMeters.LEAD;
import static brightseam.device.SampleMeters.OXYGEN;
import static brightseam.device.SampleMeters.point;
import static brightseam.device.SampleMeters.terms;
import static brightseam.kernel.Samples.ORIGIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterCommand;
import brightseam.device.MeterEvent;
import brightseam.device.MeterRecord;
import brightseam.device.RegisterKind;
import brightseam.device.SampleMeters;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class MetersTest {

    private static final SupplyId OTHER = new SupplyId("G-0602");

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = Meters.meterProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final MeterShop shop = new MeterShop(ledger, jdbc);
    private final Meters meters = shop.meters();

    private Meter register(SupplyId id, Feed feed) {
        Meter usual = SampleMeters.oxygen(feed);
        return shop.register(new Meter(id, usual.station(), usual.place(), usual.quantity(), 0, 1000, 0.1,
                usual.every(), usual.responseTime(), feed));
    }

    @Test
    void meters_are_found_by_station_while_they_are_in_use_and_a_rebuild_gives_the_same_rows() {
        register(OXYGEN, new Feed.Http());
        register(OTHER, new Feed.Simulated());
        MeterShop.done(meters.execute(new MeterCommand.TakeOutOfUse(OXYGEN, "cell spent", ORIGIN, LEAD)));
        assertThat(meters.at(CHAMBER)).extracting(MeterRecord::meter).extracting(Meter::id).containsExactly(OTHER);
        assertThat(meters.all()).extracting(MeterRecord::meter).extracting(Meter::id).containsExactly(OXYGEN, OTHER);
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertThat(FreshDatabase.rows(jdbc, projection)).isEqualTo(rows);
    }

    @Test
    void what_is_no_gauge_is_no_meter() {
        assertThat(meters.execute(new MeterCommand.RegisterMeter(OXYGEN, terms(new Feed.Http()), ORIGIN, LEAD)))
                .isInstanceOfSatisfying(Outcome.Refused.class, refused ->
                        assertThat(refused.refusals()).extracting("meter").containsExactly(OXYGEN));
    }

    @Test
    void a_calibration_holds_to_the_end_of_its_last_day() {
        register(OXYGEN, new Feed.Http());
        Instant midnight = MeterShop.LAST_DAY.plusDays(1).atStartOfDay(ZoneId.systemDefault()).toInstant();
        assertThat(meters.isCalibrated(OXYGEN, new Moment(midnight.minusMillis(1), 1))).isTrue();
        assertThat(meters.isCalibrated(OXYGEN, new Moment(midnight, 1))).isFalse();
        assertThat(meters.isCalibrated(OTHER, new Moment(midnight, 1))).isFalse();
    }

    @Test
    void a_token_is_for_the_meters_of_one_device_and_a_new_one_ends_it() {
        register(OXYGEN, new Feed.Http());
        register(OTHER, new Feed.Http());
        String both = shop.token(OXYGEN, OTHER);
        assertThat(shop.tokens().meters(both)).isEqualTo(Set.of(OXYGEN, OTHER));
        String one = shop.token(OTHER);
        assertThat(one).isNotEqualTo(both).hasSize(43);
        assertThat(shop.tokens().meters(both)).isEqualTo(Set.of(OXYGEN));
        assertThat(shop.tokens().meters(one)).isEqualTo(Set.of(OTHER));
        assertThat(shop.tokens().meters("")).isEmpty();
        assertThat(ledger.readAllAfter(0, 1000).toString() + FreshDatabase.rows(jdbc, projection))
                .doesNotContain(both).doesNotContain(one);
        assertThat(jdbc.sql("select token_hash from meter_token").query(String.class).list())
                .hasSize(2).doesNotContain(both, one);
    }

    @Test
    void tokens_and_typed_readings_are_not_carried_out_by_the_register_alone() {
        assertThatThrownBy(() -> meters.execute(new MeterCommand.MakeToken(OXYGEN, ORIGIN, LEAD)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> meters.execute(new MeterCommand.TypeReading(OXYGEN, BigDecimal.ONE, ORIGIN)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("meter-events.txt", MeterStreams.TYPES, MeterStreams.KIND.codec(), List.of(
                new MeterEvent.Registered(ORIGIN, OXYGEN, terms(new Feed.Http()), LEAD),
                new MeterEvent.Registered(ORIGIN, OXYGEN, terms(new Feed.Modbus(
                        point(502, 30, RegisterKind.FLOAT32_LOW_WORD_FIRST, "0.1"))), LEAD),
                new MeterEvent.Registered(ORIGIN, OXYGEN, terms(new Feed.Typed(Duration.ofMinutes(2))), LEAD),
                new MeterEvent.TermsChanged(ORIGIN, OXYGEN, terms(new Feed.Simulated()), "for the demo", LEAD),
                new MeterEvent.TokenMade(ORIGIN, OXYGEN, LEAD),
                new MeterEvent.ReadingTyped(ORIGIN, OXYGEN, new BigDecimal("12.50")),
                new MeterEvent.TakenOutOfUse(ORIGIN, OXYGEN, "cell spent", LEAD),
                new MeterEvent.PutBackIntoUse(ORIGIN, OXYGEN, LEAD)));
    }
}
