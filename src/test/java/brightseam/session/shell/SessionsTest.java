package brightseam.session.shell;

import static brightseam.kernel.Samples.origin;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Prepared;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.session.ArgonFact;
import brightseam.session.ArgonUse;
import brightseam.session.Broken;
import brightseam.session.ChamberSession;
import brightseam.session.GasLimits;
import brightseam.session.Item;
import brightseam.session.ItemFact;
import brightseam.session.ListFact;
import brightseam.session.LockNeed;
import brightseam.session.LockPass;
import brightseam.session.MeterFact;
import brightseam.session.Need;
import brightseam.session.OpeningFact;
import brightseam.session.SessionCommand;
import brightseam.session.SessionEvent;
import brightseam.session.SessionEvent.*;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class SessionsTest {

    private static final Origin ORIGIN = origin(0);
    private static final SessionId FIRST = new SessionId("CS-0001");
    private static final SessionId SECOND = new SessionId("CS-0002");
    private static final KitId KIT = new KitId("K-0047");
    private static final KitId OTHER = new KitId("K-0048");
    private static final StationId CHAMBER = new StationId("S-CHAMBER-1");
    private static final StationId LOCK = new StationId("S-LOCK-1");
    private static final Signer LEAD = new Signer(
            new BadgeId("P-0201"), "Bram Oduya", List.of(Role.LEAD), Optional.empty(), "badge+pin");
    private static final Item LEG = new Item(Item.Kind.PARTS, "T-1042", "TUBE", "Leg, upper tube", 4);
    private static final Item TRAY = new Item(Item.Kind.SUPPLY, "TL-0001", "stainless-lock-tray", "Tray", 1);
    private static final Need LEG_NEEDED = new Need(Item.Kind.PARTS, "T-1042", "Leg, upper tube", 1);
    private static final Need TRAY_NEEDED = new Need(Item.Kind.SUPPLY, "stainless-lock-tray", "Tray", 1);
    private static final ListFact LIST = new ListFact(
            List.of(LEG_NEEDED), new TreeSet<>(List.of("9")), Duration.ofHours(4));

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = Sessions.sessionProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final Sessions sessions = new Sessions(ledger, jdbc);

    @Test
    void sessions_are_found_by_kit_by_chamber_and_by_what_is_in_them() {
        history();
        assertThat(sessions.open()).extracting(ChamberSession::id).containsExactly(SECOND);
        assertThat(sessions.over(9)).extracting(ChamberSession::id).containsExactly(FIRST);
        assertThat(sessions.ofKit(KIT)).extracting(ChamberSession::id).containsExactly(FIRST);
        assertThat(sessions.openAt(CHAMBER)).map(ChamberSession::id).contains(SECOND);
        assertThat(sessions.openOfKit(OTHER)).map(ChamberSession::id).contains(SECOND);
        assertThat(sessions.openOfKit(KIT)).isEmpty();
        assertThat(sessions.openWith("TL-0001")).contains(SECOND);
        assertThat(sessions.openWith("T-1042")).isEmpty();
        assertThat(sessions.openWith(new TravellerId("T-1042"))).isEmpty();
        assertThat(sessions.next()).isEqualTo(new SessionId("CS-0003"));
    }

    @Test
    void rows_follow_the_ledger_and_a_rebuild_gives_the_same_rows() {
        history();
        Map<String, List<String>> before = FreshDatabase.rows(jdbc, projection);
        assertThat(before.get("session_row")).hasSize(2);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertThat(FreshDatabase.rows(jdbc, projection)).isEqualTo(before);
    }

    @Test
    void several_commands_on_one_session_share_one_append() {
        store(sessions.prepare(FIRST, List.of(open(FIRST, KIT))));
        Prepared<ChamberSession> both = sessions.prepare(FIRST, List.of(in(FIRST, LEG, KIT), in(FIRST, TRAY, KIT)));
        assertThat(((Prepared.Ready<ChamberSession>) both).appends()).singleElement()
                .satisfies(append -> assertThat(append.events()).hasSize(2));
        assertThat(sessions.prepare(FIRST, List.of(in(FIRST, LEG, KIT), in(FIRST, LEG, KIT))).broken())
                .extracting(refusal -> refusal.code()).containsExactly("item-checked-in-already");
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("session-events.txt", SessionStreams.TYPES, SessionStreams.KIND.codec(),
                Stream.concat(inTheChamber().stream(), atTheLock().stream()).toList());
    }

    private static List<SessionEvent> inTheChamber() {
        return List.of(
                new Opened(ORIGIN, FIRST, KIT, CHAMBER, Optional.of(LOCK), List.of(LEG_NEEDED, TRAY_NEEDED), LEAD),
                new Opened(ORIGIN, SECOND, OTHER, CHAMBER, Optional.empty(), List.of(), LEAD),
                new ListChanged(ORIGIN, FIRST, List.of(LEG_NEEDED)),
                new CheckedIn(ORIGIN, FIRST, LEG),
                new TakenBack(ORIGIN, FIRST, "T-1042"),
                new LeftOutAllowed(ORIGIN, FIRST, "T-1042", "comes with the noon batch", LEAD),
                new ChamberClosed(ORIGIN, FIRST, List.of("T-1042", "TL-0001"), "G-0901", LEAD),
                new PurgeStarted(ORIGIN, FIRST, argon(), limits(), Optional.of(Duration.ofMinutes(110))),
                new PurgeStarted(ORIGIN, FIRST, argon(), new GasLimits(new BigDecimal("20"), Optional.empty(),
                        Duration.ZERO, Duration.ofSeconds(10)), Optional.empty()),
                new PurgeStopped(ORIGIN, FIRST, "night"),
                new FoundFit(ORIGIN, FIRST, ORIGIN.at(), new BigDecimal("8.4"), Optional.of(new BigDecimal("22.0"))),
                new FoundUnfit(ORIGIN, FIRST, List.of(new Broken(
                        "oxygen-above-limit", Map.of("oxygenPpm", "24.1", "meter", "G-0901")))),
                new Ended(ORIGIN, FIRST, List.of(new ArgonUse(new SupplyId("A-0311"), "LOT 5",
                        new BigDecimal("5010"))), Optional.of(new BigDecimal("5200")),
                        Optional.of(new BigDecimal("20.9")), LEAD),
                new Abandoned(ORIGIN, FIRST, "drawing withdrawn", List.of(), LEAD));
    }

    private static List<SessionEvent> atTheLock() {
        LockNeed cycles = new LockNeed(LockNeed.Method.VACUUM_CYCLES, Duration.ZERO, 3, new BigDecimal("50"),
                Optional.of(new SupplyId("G-0903")));
        LockNeed sweep = new LockNeed(
                LockNeed.Method.SWEEP, Duration.ofMinutes(10), 0, new BigDecimal("50.5"), Optional.empty());
        return List.of(
                new OuterOpened(ORIGIN, FIRST),
                new PutInLock(ORIGIN, FIRST, TRAY),
                new PutOut(ORIGIN, FIRST, "T-1042", 1),
                new TakenFromLock(ORIGIN, FIRST, "TL-0001"),
                new TakenBackInside(ORIGIN, FIRST, "T-1042", 1),
                new PassedOut(ORIGIN, FIRST, "T-1042"),
                new OuterShut(ORIGIN, FIRST, sweep),
                new LockPurgeStarted(ORIGIN, FIRST, cycles),
                new LockCycled(ORIGIN, FIRST, 2),
                new InnerOpened(ORIGIN, FIRST, 1, List.of("TL-0001"), Duration.ofSeconds(612), 0,
                        Optional.of(new BigDecimal("31.0")), Optional.of(new BigDecimal("9.5")), LEAD),
                new InnerOpened(ORIGIN, FIRST, 2, List.of(), Duration.ZERO, 3, Optional.empty(), Optional.empty(),
                        LEAD),
                new InnerShut(ORIGIN, FIRST, 1),
                new PassJudged(ORIGIN, FIRST, 1, new LockPass.Effect(
                        new BigDecimal("14.2"), Duration.ofMinutes(5), true)));
    }

    private void history() {
        store(sessions.prepare(FIRST, List.of(open(FIRST, KIT), in(FIRST, LEG, KIT))));
        store(sessions.prepare(FIRST, List.of(new SessionCommand.CloseChamber(FIRST, LIST, Optional.of(new MeterFact(
                new SupplyId("G-0901"), Optional.of(BigDecimal.ONE), Optional.of(ORIGIN.at()), List.of(), true)),
                true, ORIGIN, LEAD))));
        store(sessions.prepare(FIRST, List.of(new SessionCommand.StartPurge(FIRST, Optional.of(argon()), limits(),
                Optional.empty(), List.of(), ORIGIN))));
        store(sessions.prepare(FIRST, List.of(new SessionCommand.OpenChamber(FIRST,
                new OpeningFact(List.of(), Optional.empty(), true), List.of(), Optional.empty(), ORIGIN, LEAD))));
        store(sessions.prepare(SECOND, List.of(open(SECOND, OTHER), in(SECOND, LEG, OTHER),
                in(SECOND, TRAY, OTHER), new SessionCommand.TakeBack(SECOND, "T-1042", ORIGIN))));
    }

    private void store(Prepared<ChamberSession> prepared) {
        assertThat(prepared.broken()).isEmpty();
        List<Append> appends = ((Prepared.Ready<ChamberSession>) prepared).appends();
        assertThat(ledger.append(appends)).isInstanceOf(Appended.Stored.class);
    }

    private static SessionCommand open(SessionId session, KitId kit) {
        return new SessionCommand.OpenSession(session, kit, CHAMBER, Optional.of(LOCK), LIST, Optional.empty(),
                Optional.empty(), List.of(), ORIGIN, LEAD);
    }

    private static SessionCommand in(SessionId session, Item item, KitId kit) {
        return new SessionCommand.CheckIn(session, new ItemFact(item,
                item.hasTraveller() ? Optional.of(kit) : Optional.empty(), Optional.of("9"), Optional.empty(), true,
                Optional.empty(), List.of()), LIST, ORIGIN);
    }

    private static ArgonFact argon() {
        return new ArgonFact(new SupplyId("A-0311"), "LOT 5", new BigDecimal("16000"), new BigDecimal("5200"),
                new BigDecimal("2"), new BigDecimal("3.5"));
    }

    private static GasLimits limits() {
        return new GasLimits(new BigDecimal("20"), Optional.of(new BigDecimal("50")), Duration.ofMinutes(5),
                Duration.ofSeconds(10));
    }
}
