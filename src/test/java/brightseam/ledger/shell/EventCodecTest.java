package brightseam.ledger.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.LabelEntry;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EventCodecTest {

    private static final Origin ORIGIN = new Origin(
            new Moment(Instant.parse("2031-03-04T08:00:00.250Z"), 3_600_000), new BadgeId("P-0007"), "bench 2", true);

    private final EventCodec<Sample> codec = new EventCodec<>(Map.of("dipped.1", Dipped.class, "moved.1", Moved.class));

    private sealed interface Sample {}

    private record Dipped(
            TravellerId traveller, StepId step, Duration hold, Map<StepId, BigDecimal> readings, Optional<String> note,
            Origin origin) implements Sample {}

    private record Moved(List<BinId> bins, Optional<BinId> from) implements Sample {}

    private record Stray() {}

    @Test
    void how_a_label_came_in_is_written_only_where_a_label_set_it_off() {
        Origin typed = new Origin(ORIGIN.at(), ORIGIN.by(), ORIGIN.tablet(), false, Optional.of(LabelEntry.TYPED));
        Dipped byTyping = new Dipped(new TravellerId("T-1042"), new StepId("pickle"), Duration.ofSeconds(95), Map.of(),
                Optional.empty(), typed);
        Dipped byTouch = new Dipped(new TravellerId("T-1042"), new StepId("pickle"), Duration.ofSeconds(95), Map.of(),
                Optional.empty(), ORIGIN);
        assertThat(codec.write(byTyping).json()).contains("\"label\":\"TYPED\"");
        assertThat(codec.write(byTouch).json()).doesNotContain("label");
        assertThat(codec.read(stored(codec.write(byTyping)))).isEqualTo(byTyping);
        assertThat(codec.read(stored(codec.write(byTouch)))).isEqualTo(byTouch);
    }

    @Test
    void what_was_written_is_read_back_through_the_canonical_form() {
        Dipped dipped = new Dipped(
                new TravellerId("T-1042"), new StepId("pickle"), Duration.ofSeconds(95),
                Map.of(new StepId("bath-temperature"), new BigDecimal("21.50")), Optional.of("ü \"quoted\""), ORIGIN);
        Moved moved = new Moved(List.of(new BinId("B-0142"), new BinId("B-0143")), Optional.empty());
        assertThat(codec.read(stored(codec.write(dipped)))).isEqualTo(dipped);
        assertThat(codec.read(stored(codec.write(moved)))).isEqualTo(moved);
    }

    @Test
    void the_written_form_stays_as_it_is() {
        Dipped dipped = new Dipped(
                new TravellerId("T-1042"), new StepId("pickle"), Duration.ofSeconds(95),
                Map.of(new StepId("bath-temperature"), new BigDecimal("21.50")), Optional.empty(), ORIGIN);
        assertThat(stored(codec.write(dipped)).json()).isEqualTo(
                "{\"hold\":\"PT1M35S\",\"origin\":{\"at\":{\"elapsed_millis\":3600000,"
                        + "\"wall\":\"2031-03-04T08:00:00.250Z\"},\"by\":\"P-0007\",\"demo\":true,"
                        + "\"tablet\":\"bench 2\"},\"readings\":{\"bath-temperature\":\"21.50\"},"
                        + "\"step\":\"pickle\",\"traveller\":\"T-1042\"}");
    }

    @Test
    void an_unknown_type_and_an_unknown_field_are_refused() {
        assertThatThrownBy(() -> codec.read(stored(new NewEvent("moved.2", "{}"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("moved.2");
        assertThatThrownBy(() -> codec.read(stored(new NewEvent("moved.1", "{\"bins\":[],\"lid\":\"open\"}"))))
                .hasMessageContaining("lid");
    }

    @Test
    void a_class_outside_of_the_table_and_a_class_with_two_names_are_refused() {
        assertThatThrownBy(() -> new EventCodec<Object>(Map.of("a.1", Moved.class)).write(new Stray()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new EventCodec<Object>(Map.of("a.1", Stray.class, "b.1", Stray.class)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two names");
    }

    private static Entry stored(NewEvent event) {
        NewEvent canonical = new NewEvent(event.type(), CanonicalJson.object(event.json()));
        return Chain.entry(1, Signatures.stream("T-1042"), 1, canonical, Chain.GENESIS);
    }
}
