package brightseam.ui.baths;

import static brightseam.kernel.Samples.origin;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Limits;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.line.AnalysisDue;
import brightseam.line.Bath;
import brightseam.line.BathEvent;
import brightseam.line.BathQuantity;
import brightseam.line.BathTerms;
import brightseam.line.Liquid;
import brightseam.line.SampleLine;
import brightseam.line.Station;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.ui.parts.Trend;
import brightseam.words.shell.SharedWords;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class TankLineTest {

    private static final StationId ID = new StationId("S-PICKLE-1");
    private static final Station TANK = new Station(ID, "pickle-tank", "Pickle tank", false, Optional.empty());
    private static final Signer CHEMIST = new Signer(new BadgeId("P-0401"), "Nel Aske",
            List.of(Role.PROCESS_CONTROL), Optional.empty(), "badge+pin");
    private static final BathTerms TERMS = new BathTerms(new TreeMap<>(Map.of(
            BathQuantity.NITRIC_ACID, new Limits(Optional.of(new BigDecimal("20")), Optional.empty()),
            BathQuantity.DISSOLVED_TITANIUM, new Limits(Optional.empty(), Optional.of(new BigDecimal("15"))))),
            new AnalysisDue(Optional.of(Duration.ofDays(2)), Optional.of(6), Optional.empty()), Optional.empty());

    @Test
    void a_tank_without_a_bath_says_so() {
        TankLine line = line(Optional.empty(), 0);
        assertThat(line.state()).isEqualTo("No bath registered");
        assertThat(line.detail()).contains("S-PICKLE-1 has no bath registered");
    }

    @Test
    void the_state_comes_first_in_words() {
        assertThat(line(registered(), 0).state()).isEqualTo("Never analysed");
        TankLine fit = line(analysed("25"), 0);
        assertThat(fit.state()).isEqualTo("Fit");
        assertThat(fit.detail()).contains("in 2 d 0 h").contains("after 6 more loads");
        assertThat(line(analysed("25"), 30 * 3600).state()).isEqualTo("Analysis due soon");
        assertThat(line(analysed("25"), 49 * 3600).state()).isEqualTo("Analysis overdue");
        TankLine weak = line(analysed("18.5"), 0);
        assertThat(weak.state()).isEqualTo("Bath out of limits");
        assertThat(weak.stops()).isTrue();
        assertThat(weak.detail()).contains("nitric acid: 18.5 vol %").contains("at least 20");
    }

    @Test
    void what_hangs_in_it_is_told_with_its_travellers() {
        Optional<Bath> bath = after(analysed("25"), new BathEvent.TakenIn(origin(60), ID, 1, new BinId("B-0201"),
                List.of(new TravellerId("T-1042")), Optional.empty(), false, List.of(), List.of()));
        TankLine line = TankLine.of(TANK, bath, bath.orElseThrow().inside(), origin(60).at(), SharedWords.wording(),
                ZoneOffset.UTC);
        assertThat(line.inside()).isEqualTo("B-0201 since 08:01 (T-1042)");
        assertThat(BathFacts.of(bath.orElseThrow(), List.of(), 1, origin(60).at(), ZoneOffset.UTC))
                .anySatisfy(fact -> assertThat(fact.words()).contains("1 of them of unknown area"));
    }

    @Test
    void the_life_of_a_pickle_is_told_in_loads_and_area() {
        Bath bath = analysed("25").orElseThrow();
        // 5 g/L now, 15 allowed, 400 L: 4000 g; each load 2 m2 x 20 g/m2 = 40 g.
        assertThat(LifeForm.words(bath, new BigDecimal("2"), new BigDecimal("20")))
                .startsWith("Takes 100 more loads or 200 m²");
        assertThat(LifeForm.words(bath, new BigDecimal("300"), new BigDecimal("20"))).startsWith("Not one more load");
    }

    @Test
    void trends_keep_the_verdict_of_their_day_and_the_csv_has_a_column_for_each_quantity() {
        List<SampleLine> lines = List.of(sample("A-2", 2, "19", List.of(BathQuantity.NITRIC_ACID)),
                sample("A-1", 1, "25", List.of()));
        assertThat(Trends.of(lines, List.of(), TERMS, ZoneOffset.UTC)).singleElement().satisfies(trend -> {
            assertThat(trend.points()).extracting(Trend.Point::inOrder).containsExactly(true, false);
            assertThat(trend.words()).contains("2 readings from 4 Mar to 5 Mar").contains("1 out of limits");
            assertThat(trend.svg()).contains("min 20").doesNotContain("NaN");
        });
        assertThat(Histories.csv(lines).lines().toList()).hasSize(3).last().asString()
                .startsWith("A-2,1,2031-03-05T08:00:00Z,").contains("out of limits,19,");
    }

    private static SampleLine sample(String name, int day, String nitric, List<BathQuantity> outside) {
        Instant at = Instant.parse("2031-03-03T08:00:00Z").plus(Duration.ofDays(day));
        return new SampleLine(name, 1, at, at, "titration",
                new TreeMap<>(Map.of(BathQuantity.NITRIC_ACID, new BigDecimal(nitric))), outside, List.of(),
                "Nel Aske");
    }

    private static TankLine line(Optional<Bath> bath, long seconds) {
        return TankLine.of(TANK, bath, List.of(), origin(seconds).at(), SharedWords.wording(), ZoneOffset.UTC);
    }

    private static Optional<Bath> registered() {
        return after(Optional.empty(), new BathEvent.Registered(
                origin(0), ID, Liquid.PICKLING_ACID, new BigDecimal("400"), 1, TERMS, CHEMIST));
    }

    private static Optional<Bath> analysed(String nitric) {
        Origin origin = origin(0);
        TreeMap<BathQuantity, BigDecimal> values = new TreeMap<>(Map.of(
                BathQuantity.NITRIC_ACID, new BigDecimal(nitric),
                BathQuantity.DISSOLVED_TITANIUM, new BigDecimal("5")));
        return after(registered(), new BathEvent.Analysed(origin, ID, 1, "A-1", "titration", origin.at(), values,
                TERMS.outOfLimits(values), List.of(), CHEMIST));
    }

    private static Optional<Bath> after(Optional<Bath> bath, BathEvent event) {
        return Optional.of(Bath.evolve(bath, event));
    }
}
