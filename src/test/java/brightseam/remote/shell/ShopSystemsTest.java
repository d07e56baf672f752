package brightseam.remote.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SystemId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.TokenTries;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.people.shell.StoppedClock;
import brightseam.remote.Scope;
import brightseam.remote.ShopSystem;
import brightseam.remote.SystemCommand;
import brightseam.remote.SystemEvent;
import brightseam.remote.SystemRelease;
import brightseam.remote.shell.ShopSystems.Caller;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class ShopSystemsTest {

    private static final SystemId ORDERS = new SystemId("ORDERS-1");
    private static final Signer ADMIN = signer("P-0001", Role.ADMINISTRATOR);
    private static final Signer LEAD = signer("P-0201", Role.LEAD);

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = ShopSystems.shopSystemProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final AtomicLong realMillis = new AtomicLong();
    private final ShopSystems systems = new ShopSystems(ledger, jdbc, new StoppedClock(), realMillis::get);

    private static Signer signer(String badge, Role role) {
        return new Signer(new BadgeId(badge), "Name of " + badge, List.of(role), Optional.empty(), "badge+pin");
    }

    private static SystemCommand.Register register(Signer signer, Optional<Signer> answering, Scope... scopes) {
        return new SystemCommand.Register(ORDERS, "Order book", List.of(scopes), answering, ORIGIN, signer);
    }

    private String token() {
        return ((Outcome.Done<String>) systems.makeToken(ORDERS, ORIGIN, ADMIN)).result();
    }

    private List<String> refused(SystemCommand command) {
        return assertInstanceOf(Outcome.Refused.class, systems.execute(command)).refusals().stream()
                .map(refusal -> ((Refusal) refusal).code()).toList();
    }

    private void done(SystemCommand command) {
        assertInstanceOf(Outcome.Done.class, systems.execute(command));
    }

    @Test
    void a_token_is_known_until_the_next_one_is_made_or_it_is_withdrawn() {
        done(register(ADMIN, Optional.of(LEAD), Scope.RELEASE, Scope.READ));
        String first = token();
        assertThat(caller(first)).isInstanceOf(Caller.Known.class);
        assertThat(systems.lastUsed(ORDERS)).isPresent();
        String second = token();
        assertThat(second).hasSize(43).isNotEqualTo(first);
        assertThat(caller(first)).isInstanceOf(Caller.Unknown.class);
        ShopSystem known = ((Caller.Known) caller(second)).system();
        assertThat(known.scopes()).containsExactly(Scope.READ, Scope.RELEASE);
        assertThat(known.answering().orElseThrow().badge()).isEqualTo(LEAD.badge());
        done(new SystemCommand.WithdrawToken(ORDERS, "the server was sold", ORIGIN, ADMIN));
        assertThat(caller(second)).isInstanceOf(Caller.Unknown.class);
        assertThat(systems.all().getFirst().withdrawn().orElseThrow().reason()).isEqualTo("the server was sold");
    }

    @Test
    void the_token_itself_is_nowhere_kept() {
        done(register(ADMIN, Optional.empty(), Scope.READ));
        String token = token();
        assertThat(ledger.readAllAfter(0, 100).toString()).doesNotContain(token);
        assertThat(FreshDatabase.rows(jdbc, projection).toString()).doesNotContain(token);
    }

    @Test
    void administrators_sign_and_a_lead_answers_for_what_is_released() {
        assertThat(refused(register(LEAD, Optional.of(ADMIN), Scope.RELEASE)))
                .containsExactlyInAnyOrder("system-role-missing", "system-answerer-is-no-lead");
        assertThat(refused(register(ADMIN, Optional.empty(), Scope.RELEASE)))
                .containsExactly("system-nobody-answers");
        assertThat(refused(new SystemCommand.MakeToken(ORDERS, "0".repeat(64), ORIGIN, ADMIN)))
                .containsExactly("system-unknown");
        done(register(ADMIN, Optional.empty(), Scope.READ));
        assertThat(refused(register(ADMIN, Optional.empty(), Scope.READ)))
                .containsExactly("system-already-registered");
        assertThat(refused(new SystemCommand.WithdrawToken(ORDERS, "no reason", ORIGIN, ADMIN)))
                .containsExactly("system-has-no-token");
        assertThat(refused(new SystemCommand.AnswerFor(ORDERS, ORIGIN, ADMIN, ADMIN)))
                .containsExactly("system-answerer-is-no-lead");
    }

    @Test
    void whoever_tries_too_often_waits_and_others_do_not() {
        done(register(ADMIN, Optional.empty(), Scope.READ));
        String token = token();
        for (int i = 0; i < TokenTries.TRIES_MAX; i++) {
            assertThat(caller("wrong" + i)).isInstanceOf(Caller.Unknown.class);
        }
        assertThat(caller(token)).isEqualTo(new Caller.TooOften(60));
        assertThat(systems.caller("elsewhere", Optional.of("bearer " + token))).isInstanceOf(Caller.Known.class);
        realMillis.addAndGet(TokenTries.WINDOW_MILLIS);
        assertThat(caller(token)).isInstanceOf(Caller.Known.class);
        assertThat(systems.caller("here", Optional.empty())).isInstanceOf(Caller.Unknown.class);
    }

    @Test
    void a_rebuild_gives_the_same_rows() {
        done(register(ADMIN, Optional.of(LEAD), Scope.RELEASE));
        token();
        done(new SystemCommand.WithdrawToken(ORDERS, "a new one comes", ORIGIN, ADMIN));
        token();
        done(new SystemCommand.AnswerFor(ORDERS, ORIGIN, ADMIN, signer("P-0202", Role.LEAD)));
        assertEquals(systems.find(ORDERS).orElseThrow().state(), systems.all().getFirst());
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertEquals(rows, FreshDatabase.rows(jdbc, projection));
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("shop-system-events.txt", SystemStreams.TYPES, SystemStreams.KIND.codec(), List.of(
                new SystemEvent.Registered(ORIGIN, ORDERS, "Order book", List.of(Scope.READ, Scope.RELEASE),
                        Optional.of(LEAD), ADMIN),
                new SystemEvent.TokenMade(ORIGIN, ORDERS, "0".repeat(64), ADMIN),
                new SystemEvent.AnsweredFor(ORIGIN, ORDERS, LEAD, ADMIN),
                new SystemEvent.TokenWithdrawn(ORIGIN, ORDERS, "the server was sold", ADMIN)));
        ApprovedEvents.check("shop-system-release-events.txt", SystemStreams.RELEASE_TYPES,
                SystemStreams.RELEASES.codec(), List.of(new SystemRelease.Done(ORIGIN, ORDERS, "order 4711",
                        "0".repeat(64), new KitId("K-0091"), List.of(new TravellerId("T-1001")))));
    }

    private Caller caller(String token) {
        return systems.caller("here", Optional.of("Bearer " + token));
    }
}
