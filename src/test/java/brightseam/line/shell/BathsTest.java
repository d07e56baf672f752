package brightseam.line.shell;

import static brightseam.kernel.Samples.origin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Limits;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.line.Addend;
import brightseam.line.Addition;
import brightseam.line.AnalysisDue;
import brightseam.line.BathCommand;
import brightseam.line.BathDeed;
import brightseam.line.BathEvent;
import brightseam.line.BathLock;
import brightseam.line.BathQuantity;
import brightseam.line.BathTerms;
import brightseam.line.BathVerdict;
import brightseam.line.Liquid;
import brightseam.line.SampleLine;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class BathsTest {

    private static final StationId RINSE = new StationId("S-RINSE-1");
    private static final Signer CHEMIST = new Signer(new BadgeId("P-0401"), "Nel Aske",
            List.of(Role.PROCESS_CONTROL), Optional.empty(), "badge+pin");
    private static final BathTerms TERMS = new BathTerms(
            new TreeMap<>(Map.of(BathQuantity.CONDUCTIVITY,
                    new Limits(Optional.empty(), Optional.of(new BigDecimal("550"))))),
            new AnalysisDue(Optional.of(Duration.ofDays(1)), Optional.of(20), Optional.empty()), Optional.empty());
    private static final Origin ORIGIN = origin(0);

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection analyses = Baths.bathProjection(jdbc);
    private final Projection deeds = Baths.bathDeedProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(analyses, deeds);
    private final Baths baths = new Baths(ledger, jdbc);

    @Test
    void rows_follow_the_ledger_and_a_rebuild_gives_the_same_rows() {
        history();
        assertThat(baths.all()).containsExactly(baths.find(RINSE).orElseThrow().state());
        Map<String, List<String>> before = FreshDatabase.rows(jdbc, analyses);
        FreshDatabase.rebuild(jdbc, analyses, ledger);
        assertThat(FreshDatabase.rows(jdbc, analyses)).isEqualTo(before);
        Map<String, List<String>> deedsBefore = FreshDatabase.rows(jdbc, deeds);
        FreshDatabase.rebuild(jdbc, deeds, ledger);
        assertThat(FreshDatabase.rows(jdbc, deeds)).isEqualTo(deedsBefore);
    }

    @Test
    void analyses_and_deeds_are_listed_latest_first() {
        history();
        assertThat(baths.samples(RINSE, 9)).extracting(SampleLine::sample).containsExactly("W-2", "W-1");
        assertThat(baths.samples(RINSE, 1)).singleElement().satisfies(last -> {
            assertThat(last.inLimits()).isFalse();
            assertThat(last.values()).isEqualTo(conductivity("610"));
            assertThat(last.workings()).containsExactly("read off the meter", "twice");
        });
        assertThat(baths.deeds(RINSE, 9)).extracting(BathDeed::what).containsExactly(
                BathDeed.What.MADE_UP, BathDeed.What.ADDED, BathDeed.What.LOCKED, BathDeed.What.REGISTERED);
        assertThat(baths.deeds(RINSE, 9)).extracting(BathDeed::fill).containsExactly(2, 1, 1, 1);
    }

    @Test
    void what_can_name_suspects_is_not_carried_out_without_telling_them() {
        assertThatThrownBy(() -> baths.execute(analysis("W-1", "300", 1))).hasMessageContaining("suspects");
    }

    @Test
    void two_loads_in_turn_share_one_append() {
        done(new BathCommand.RegisterBath(
                RINSE, Liquid.RINSE_WATER, new BigDecimal("250"), 1, TERMS, ORIGIN, CHEMIST));
        store(baths.prepare(analysis("W-1", "300", 1)));
        assertThat(baths.prepare(RINSE, List.of(load("B-1", 2), load("B-2", 2, "B-1"))).broken())
                .extracting(refusal -> refusal.code()).containsExactly("tank-occupied");
        assertThat(((Prepared.Ready<?>) baths.prepare(RINSE, List.of(load("B-1", 2), load("B-2", 3)))).appends())
                .singleElement().satisfies(append -> assertThat(append.events()).hasSize(2));
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("bath-events.txt", BathStreams.TYPES, BathStreams.KIND.codec(), List.of(
                new BathEvent.Registered(
                        ORIGIN, RINSE, Liquid.RINSE_WATER, new BigDecimal("250"), 2, TERMS, CHEMIST),
                new BathEvent.TermsChanged(ORIGIN, RINSE, new BathTerms(TERMS.limits(), AnalysisDue.never(),
                        Optional.of(new BigDecimal("45.5"))), "new drawing", CHEMIST),
                new BathEvent.MadeUp(ORIGIN, RINSE, 2, "fresh water", List.of("250 L"),
                        List.of(new TravellerId("T-1042")), CHEMIST),
                new BathEvent.Analysed(ORIGIN, RINSE, 1, "W-2", "meter", ORIGIN.at(), conductivity("610"),
                        List.of(BathQuantity.CONDUCTIVITY), List.of("read off the meter"), CHEMIST),
                new BathEvent.Added(ORIGIN, RINSE, 1, new Addition(
                        Addend.WATER, new BigDecimal("12.5"), "vapour", List.of("level 3 cm low")), CHEMIST),
                new BathEvent.TakenIn(ORIGIN, RINSE, 1, new BinId("B-0201"), List.of(new TravellerId("T-1042")),
                        Optional.of(new BigDecimal("1.25")), false, List.of(new BinId("B-0202")),
                        List.of("bath-locked")),
                new BathEvent.Locked(ORIGIN, RINSE, BathLock.Cause.OUT_OF_LIMITS, Optional.empty(), Optional.empty()),
                new BathEvent.Unlocked(
                        ORIGIN, RINSE, BathLock.Cause.BY_HAND, Optional.of("fan runs"), Optional.of(CHEMIST)),
                new BathEvent.SuspectsNamed(ORIGIN, RINSE, BathLock.Cause.FOUND_BAD,
                        List.of(new TravellerId("T-1042"), new TravellerId("T-1043")))));
    }

    private void history() {
        done(new BathCommand.RegisterBath(
                RINSE, Liquid.RINSE_WATER, new BigDecimal("250"), 2, TERMS, ORIGIN, CHEMIST));
        store(baths.prepare(analysis("W-1", "300", 1)));
        done(load("B-1", 2));
        BathVerdict verdict = store(baths.prepare(analysis("W-2", "610", 3)));
        assertThat(verdict.suspects()).containsExactly(new TravellerId("T-1042"));
        done(new BathCommand.RecordAddition(RINSE,
                new Addition(Addend.WATER, new BigDecimal("60"), "fresh water", List.of()), origin(4), CHEMIST));
        done(new BathCommand.MakeUp(RINSE, "fresh water", List.of(), origin(5), CHEMIST));
    }

    private static BathCommand analysis(String sample, String conductivity, long second) {
        return new BathCommand.EnterAnalysis(RINSE, sample, "meter", origin(second).at(), conductivity(conductivity),
                List.of("read off the meter", "twice"), origin(second), CHEMIST);
    }

    private static BathCommand load(String basket, long second, String... inside) {
        return new BathCommand.TakeIn(RINSE, new BinId(basket), new TreeSet<>(Set.of(new TravellerId("T-1042"))),
                Optional.empty(), Set.copyOf(List.of(inside).stream().map(BinId::new).toList()), false,
                origin(second));
    }

    private static SortedMap<BathQuantity, BigDecimal> conductivity(String value) {
        return new TreeMap<>(Map.of(BathQuantity.CONDUCTIVITY, new BigDecimal(value)));
    }

    private void done(BathCommand command) {
        assertThat(baths.execute(command)).isInstanceOf(Outcome.Done.class);
    }

    private <R> R store(Prepared<R> prepared) {
        assertThat(prepared.broken()).isEmpty();
        Prepared.Ready<R> ready = (Prepared.Ready<R>) prepared;
        ledger.append(ready.appends());
        return ready.result();
    }
}
