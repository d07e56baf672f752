package brightseam.ui.gear;

import static brightseam.chamber.Gear.MATERIALS;
import static brightseam.chamber.Gear.at;
import static brightseam.chamber.Gear.chamber;
import static brightseam.chamber.Gear.decimal;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.chamber.Chamber;
import brightseam.chamber.ConsumptionReport;
import brightseam.chamber.Gear;
import brightseam.chamber.shell.ArgonUse;
import brightseam.kernel.SessionId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ChamberFactsTest {

    private static Map<String, String> gear(Chamber chamber) {
        return ChamberFacts.gear(chamber, at(0).wall(), ZoneOffset.UTC).stream()
                .collect(Collectors.toMap(ChamberFacts.Fact::name, fact -> fact.words().replace('\u00a0', ' ')));
    }

    @Test
    void the_gear_is_told_with_units() {
        Map<String, String> facts = gear(chamber(Gear.BUNDLE));
        assertThat(facts).containsEntry("Inside", "800 L, and 24 L in the glove ports")
                .containsEntry("Transfer lock",
                        "S-LOCK-1, 40 L: pumped down to 0.1 bar absolute and filled, again and again")
                .containsEntry("Argon comes from", "G-0601; 2 sources at once")
                .containsEntry("Leaks", "no leak test was entered: forecasts take it as tight");
        assertThat(gear(Gear.leaking(chamber(), "0.0005")).get("Leaks"))
                .isEqualTo("0.0005 L/min of air; rise test, 08:00 by Somebody");
    }

    @Test
    void every_limit_says_whose_it_is() {
        assertThat(ChamberFacts.limits(Gear.terms())).hasSize(7)
                .allSatisfy(limit -> assertThat(limit.source()).isEqualTo("common practice"));
        assertThat(ChamberFacts.limits(Gear.terms()).getFirst().value()).isEqualTo("at most 30\u00a0ppm");
    }

    @Test
    void what_stays_outside_says_why_and_what_never_goes_in_comes_last() {
        assertThat(ChamberFacts.permitted(Gear.terms("stainless-steel"), MATERIALS)).singleElement()
                .extracting(ChamberFacts.MaterialLine::name).isEqualTo("stainless steel");
        List<ChamberFacts.MaterialLine> outside = ChamberFacts.outside(Gear.terms("stainless-steel"), MATERIALS);
        assertThat(outside.getFirst()).isEqualTo(new ChamberFacts.MaterialLine("cotton", "Not on the list. Dry."));
        assertThat(outside).filteredOn(line -> line.name().equals("PVC")).singleElement()
                .extracting(ChamberFacts.MaterialLine::words)
                .isEqualTo("Never: it gives off much gas and reacts with titanium. Chlorine.");
    }

    @Test
    void what_a_session_used_is_told_against_its_forecast() {
        ArgonUse more = new ArgonUse(at(0).wall(), new ConsumptionReport(new SessionId("CS-0012"), decimal("8000"),
                Optional.of(decimal("8600")), Optional.of(decimal("8500")), 75,
                List.of(new ConsumptionReport.SourceUse(Gear.BUNDLE, decimal("8600")))));
        UsedLine line = UsedLine.of(more, ZoneOffset.UTC);
        assertThat(line.difference()).isEqualTo("7.5\u00a0% more");
        assertThat(line.byFlow()).isEqualTo("8.5\u00a0m³, and 1 min 15 s without a reading");
        assertThat(line.sources()).isEqualTo("G-0601 8.6\u00a0m³");
        ArgonUse unread = new ArgonUse(at(0).wall(), new ConsumptionReport(new SessionId("CS-0013"), decimal("8000"),
                Optional.empty(), Optional.empty(), 0, List.of()));
        assertThat(UsedLine.of(unread, ZoneOffset.UTC).byContent()).isEqualTo("not read");
        assertThat(UsedLine.of(unread, ZoneOffset.UTC).difference()).isEqualTo("not known");
        assertThat(UsedLine.csv(List.of(unread, more)).lines().toList()).hasSize(3).element(1).asString()
                .isEqualTo("CS-0012,2031-03-04T08:00:00Z,8000,8600,8500,75,7.5,G-0601 8600");
    }
}
