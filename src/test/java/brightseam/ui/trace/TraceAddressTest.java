package brightseam.ui.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.TravellerId;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.TraceQuestion;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TraceAddressTest {

    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");

    @Test
    void an_address_asks_what_it_was_made_from() {
        TraceQuestion question = new TraceQuestion(ThingKind.GLOVES, Optional.of("G-0031"), Optional.of("77/A & +"),
                Optional.of(Instant.parse("2031-03-04T07:00:00Z")), Optional.of(Instant.parse("2031-03-04T17:30:00Z")));
        String address = TraceAddress.of(question, ZONE);
        assertThat(address).startsWith("trace?kind=gloves&label=G-0031&lot=").contains("from=2031-03-04T08%3A00");
        assertThat(read(address).question()).contains(question);
        for (ThingKind kind : ThingKind.values()) {
            Thing thing = kind.hasLots() ? new Thing(kind, "G-0031", "fill 2") : Thing.of(kind, "B-0142");
            assertThat(read(TraceAddress.of(thing)).question()).contains(TraceQuestion.of(thing));
        }
    }

    @Test
    void pieces_are_asked_about_by_their_traveller() {
        TravellerId id = new TravellerId("T-1042.1");
        assertThat(read(TraceAddress.of(id))).isEqualTo(
                new TraceAddress(Optional.empty(), Optional.of(id), Optional.empty()));
        assertThat(read(TraceAddress.of(id, 3)).piece()).contains(3);
    }

    @Test
    void a_station_with_a_lot_is_the_bath_in_its_tank_and_small_letters_do() {
        assertThat(read("trace?kind=station&label=s-pickle-1&lot=fill+3").question()).contains(
                TraceQuestion.of(new Thing(ThingKind.BATH, "S-PICKLE-1", "fill 3")));
    }

    @Test
    void an_address_without_a_question_asks_nothing_and_a_wrong_one_is_refused() {
        assertThat(read("trace?from=x").question()).isEmpty();
        for (String wrong : List.of("trace?kind=cup&label=B-1", "trace?kind=bin", "trace?kind=traveller",
                "trace?kind=traveller&label=T-1&piece=two", "trace?kind=bin&label=B-1&from=yesterday",
                "trace?kind=traveller&label=%3Cscript%3E",
                "trace?kind=bin&label=B-1&from=2031-03-04T08:00&until=2031-03-04T07:00")) {
            assertThatThrownBy(() -> read(wrong)).as(wrong).isInstanceOf(IllegalArgumentException.class);
        }
    }

    private static TraceAddress read(String address) {
        Map<String, List<String>> parameters = new LinkedHashMap<>();
        for (String one : address.substring(address.indexOf('?') + 1).split("&")) {
            String[] parts = one.split("=", 2);
            parameters.put(parts[0], List.of(URLDecoder.decode(parts[1], StandardCharsets.UTF_8)));
        }
        return TraceAddress.read(parameters, ZONE);
    }
}
