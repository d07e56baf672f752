package brightseam.ui.gear;

import static brightseam.chamber.Gear.CHAMBER;
import static brightseam.chamber.Gear.FABRICATOR;
import static brightseam.chamber.Gear.at;
import static brightseam.chamber.Gear.decimal;
import static brightseam.kernel.Samples.origin;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.chamber.ArgonDemand;
import brightseam.chamber.ArgonNeed;
import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import brightseam.kit.Kit;
import brightseam.session.ArgonFact;
import brightseam.session.ChamberSession;
import brightseam.session.GasLimits;
import brightseam.session.SessionEvent;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DemandsTest {

    private static final SessionId SESSION = new SessionId("CS-0012");
    private static final KitId KIT = new KitId("K-0047");
    private static final ArgonNeed.Needed NEED =
            new ArgonNeed.Needed(Duration.ofHours(2), Duration.ofHours(4), 8_000, 2_000, 400);

    private static ChamberSession session(SessionEvent... more) {
        ChamberSession session = ChamberSession.evolve(Optional.empty(), new SessionEvent.Opened(
                origin(0), SESSION, KIT, CHAMBER, Optional.empty(), List.of(), FABRICATOR));
        for (SessionEvent event : more) {
            session = ChamberSession.evolve(Optional.of(session), event);
        }
        return session;
    }

    private static SessionEvent purge() {
        return new SessionEvent.PurgeStarted(origin(0), SESSION, new ArgonFact(new SupplyId("G-0601"), "L-31",
                decimal("90000"), decimal("10400"), decimal("2"), decimal("3")),
                new GasLimits(decimal("30"), Optional.empty(), Duration.ZERO, Duration.ofSeconds(10)),
                Optional.empty());
    }

    private static SessionEvent fit(long second) {
        return new SessionEvent.FoundFit(origin(second), SESSION, at(second), decimal("20"), Optional.empty());
    }

    private static Kit kit(String label, Optional<Instant> due, boolean closed) {
        return new Kit(new KitId(label), "Frame", due, List.of(), closed);
    }

    @Test
    void a_session_takes_all_before_its_purge_and_less_and_less_after_it() {
        assertThat(Demands.rest(NEED, session(), at(60))).isEqualTo(NEED);
        ArgonNeed.Needed half = Demands.rest(NEED, session(purge()), at(3600));
        assertThat(half.purgeStandardLitres()).isEqualTo(4_000);
        assertThat(half.purge()).isEqualTo(Duration.ofHours(1));
        assertThat(half.standardLitres()).isEqualTo(6_400);
        ArgonNeed.Needed fit = Demands.rest(NEED, session(purge(), fit(7200)), at(4 * 3600));
        assertThat(fit.purgeStandardLitres()).isZero();
        assertThat(fit.standardLitres()).isEqualTo(1_200);
        assertThat(Demands.rest(NEED, session(purge(), fit(7200)), at(9 * 3600)).standardLitres()).isZero();
    }

    @Test
    void the_open_session_draws_now_and_kits_when_they_are_due_but_not_before_now() {
        Instant now = at(0).wall();
        List<ArgonDemand> demands = Demands.of(NEED, Optional.of(session()), List.of(
                kit("K-0048", Optional.of(now.plusSeconds(3600)), false),
                kit("K-0049", Optional.of(now.minusSeconds(3600)), false),
                kit("K-0050", Optional.empty(), false)), at(0));
        assertThat(demands).extracting(demand -> demand.kit().orElseThrow().value())
                .containsExactly("K-0047", "K-0048", "K-0049");
        assertThat(demands).extracting(ArgonDemand::startsAt).containsExactly(now, now.plusSeconds(3600), now);
        assertThat(demands.getFirst().session()).contains(SESSION);
    }

    @Test
    void a_kit_that_has_its_session_or_is_closed_waits_for_none() {
        Kit waits = kit("K-0048", Optional.empty(), false);
        Kit had = kit("K-0047", Optional.empty(), false);
        Kit closed = kit("K-0049", Optional.empty(), true);
        assertThat(Demands.waiting(List.of(had, waits, closed), kit -> kit.id().equals(KIT)
                ? List.of(session()) : List.of())).containsExactly(waits);
        assertThat(Demands.waiting(List.of(had), kit -> List.of(session(new SessionEvent.Abandoned(
                origin(9), SESSION, "arm torn", List.of(), FABRICATOR))))).containsExactly(had);
    }
}
