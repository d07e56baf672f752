package brightseam.session;

import static brightseam.kernel.Samples.origin;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/** A session whose clock the tests turn: what happened in it, and what it answers next. */
final class SessionRig {

    static final SessionId ID = new SessionId("CS-0012");
    static final KitId KIT = new KitId("K-0047");
    static final StationId CHAMBER = new StationId("S-CHAMBER-1");
    static final StationId LOCK = new StationId("S-LOCK-1");
    static final SupplyId O2 = new SupplyId("G-0901");
    static final SupplyId H2O = new SupplyId("G-0902");
    static final SupplyId LOCK_O2 = new SupplyId("G-0903");
    static final SupplyId ROOM = new SupplyId("G-0904");
    static final SupplyId ARGON = new SupplyId("A-0311");
    static final Signer FABRICATOR = signer("P-0101", "Iva Roen", Role.FABRICATOR);
    static final Signer LEAD = signer("P-0201", "Bram Oduya", Role.LEAD);
    static final Signer INSPECTOR = signer("P-0301", "Sanne Hult", Role.INSPECTOR);
    static final Item LEG = new Item(Item.Kind.PARTS, "T-1042", "TUBE", "Leg, upper tube", 4);
    static final Item LUG = new Item(Item.Kind.PARTS, "T-1043", "FITTING", "Release bail lug", 2);
    static final Item WIRE = new Item(Item.Kind.FILLER, "T-1044", "FILLER", "Filler rods", 40);
    static final Item TRAY = supply("TL-0001", "stainless-lock-tray");
    static final Item GLOVES_A = supply("G-0031", "white-cotton");
    static final Item GLOVES_B = supply("G-0032", "white-cotton");
    static final List<Need> NEEDS = List.of(need(LEG), need(LUG), need(WIRE),
            new Need(Item.Kind.SUPPLY, "stainless-lock-tray", "Tray", 1),
            new Need(Item.Kind.SUPPLY, "white-cotton", "White cotton gloves", 2));
    static final GasLimits LIMITS = new GasLimits(new BigDecimal("20"), Optional.of(new BigDecimal("50")),
            Duration.ofMinutes(5), Duration.ofSeconds(10));
    static final Duration PURGE_AND_WORK = Duration.ofHours(5);

    private Optional<ChamberSession> session = Optional.empty();
    private ListFact list = list(NEEDS);
    private long now;

    interface Ask extends Function<SessionRig, SessionCommand> {}

    static SessionRig opened() {
        return new SessionRig().does(SessionRig::open);
    }

    static SessionRig checkedIn() {
        return opened().later(60).does(in(LEG)).does(in(LUG)).does(in(WIRE)).does(in(TRAY)).does(in(GLOVES_A))
                .does(in(GLOVES_B));
    }

    static SessionRig closed() {
        return checkedIn().later(60).does(SessionRig::close);
    }

    static SessionRig purging() {
        return closed().later(60).does(SessionRig::startPurge);
    }

    static SessionRig fit() {
        return purging().later(7_200).does(SessionRig::noteFit);
    }

    /** Fit, the wire left out and now in the purged lock. */
    static SessionRig wireInPurgedLock() {
        return fitWithoutWire().does(SessionRig::openOuter).does(late(WIRE)).does(rig -> rig.shutOuter(sweep()))
                .later(600);
    }

    static SessionRig fitWithoutWire() {
        return opened().later(60).does(in(LEG)).does(in(LUG)).does(in(TRAY)).does(in(GLOVES_A)).does(in(GLOVES_B))
                .does(leaveOut("T-1044")).does(SessionRig::close).does(SessionRig::startPurge).later(7_200)
                .does(SessionRig::noteFit);
    }

    SessionRig later(long seconds) {
        now += seconds;
        return this;
    }

    SessionRig needing(Need... needs) {
        list = list(List.of(needs));
        return this;
    }

    ChamberSession session() {
        return session.orElseThrow();
    }

    Moment now() {
        return at().at();
    }

    Origin at() {
        return origin(now);
    }

    Decision<SessionEvent> decide(Ask ask) {
        return SessionDecider.decide(session, ask.apply(this));
    }

    SessionRig does(Ask ask) {
        events(ask).forEach(event -> session = Optional.of(ChamberSession.evolve(session, event)));
        return this;
    }

    /** The events that follow; fails where it is refused. */
    List<SessionEvent> events(Ask ask) {
        return switch (decide(ask)) {
            case Decision.Accepted<SessionEvent> accepted -> accepted.events();
            case Decision.Refused<SessionEvent> refused -> throw new AssertionError(refused.refusals());
        };
    }

    /** The refusals; empty where it is accepted. */
    List<Refusal> refusals(Ask ask) {
        return decide(ask) instanceof Decision.Refused<SessionEvent> refused ? refused.refusals() : List.of();
    }

    List<String> codes(Ask ask) {
        return refusals(ask).stream().map(Refusal::code).toList();
    }

    // What is asked, with facts that have nothing against it.

    SessionCommand open() {
        return open(FABRICATOR, Optional.empty(), Optional.empty());
    }

    SessionCommand open(Signer signer, Optional<SessionId> chamberBusy, Optional<SessionId> kitBusy) {
        return new SessionCommand.OpenSession(
                ID, KIT, CHAMBER, Optional.of(LOCK), list, chamberBusy, kitBusy, List.of(), at(), signer);
    }

    static Ask in(Item item) {
        return rig -> rig.checkIn(fact(item));
    }

    SessionCommand checkIn(ItemFact fact) {
        return new SessionCommand.CheckIn(ID, fact, list, at());
    }

    static Ask takeBack(String label) {
        return rig -> new SessionCommand.TakeBack(ID, label, rig.at());
    }

    static Ask leaveOut(String key) {
        return rig -> new SessionCommand.LeaveOut(ID, key, "comes with the noon batch", rig.list, rig.at(), LEAD);
    }

    SessionCommand close() {
        return close(Optional.of(meter(O2, "209000", "out-of-range")), true, FABRICATOR);
    }

    SessionCommand close(Optional<MeterFact> oxygen, boolean cautionsRead, Signer signer) {
        return new SessionCommand.CloseChamber(ID, list, oxygen, cautionsRead, at(), signer);
    }

    SessionCommand startPurge() {
        return startPurge(Optional.of(argon("16000", "5200", "2", "3.5")));
    }

    SessionCommand startPurge(Optional<ArgonFact> argon) {
        return new SessionCommand.StartPurge(
                ID, argon, LIMITS, Optional.of(Duration.ofMinutes(110)), List.of(), at());
    }

    SessionCommand stopPurge(Refusal... objections) {
        return new SessionCommand.StopPurge(ID, "night", List.of(objections), at());
    }

    SessionCommand noteFit() {
        return new SessionCommand.NoteGas(ID, new Fitness.Fit(
                at().at().plus(Duration.ofMinutes(-6)), new BigDecimal("8.4"), Optional.of(new BigDecimal("22.0"))),
                at());
    }

    SessionCommand noteUnfit() {
        return new SessionCommand.NoteGas(ID, new Fitness.NotFit(List.of(new SessionRefusal.OxygenAboveLimit(
                O2, new BigDecimal("24.0"), new BigDecimal("20")))), at());
    }

    SessionCommand openOuter() {
        return new SessionCommand.OpenOuter(ID, at());
    }

    static Ask late(Item item) {
        return rig -> new SessionCommand.PutInLock(ID, fact(item), rig.list, rig.at());
    }

    static Ask out(String label, Refusal... objections) {
        return rig -> new SessionCommand.PutOut(ID, label, List.of(objections), rig.at());
    }

    static Ask take(String label) {
        return rig -> new SessionCommand.TakeFromLock(ID, label, rig.at());
    }

    SessionCommand shutOuter(LockNeed need) {
        return new SessionCommand.ShutOuter(ID, need, at());
    }

    SessionCommand purgeLock(LockNeed need) {
        return new SessionCommand.PurgeLock(ID, need, at());
    }

    SessionCommand cycle() {
        return new SessionCommand.NoteCycle(ID, at());
    }

    SessionCommand openInner() {
        return openInner(Optional.empty(), true, FABRICATOR);
    }

    SessionCommand openInner(Optional<MeterFact> lockOxygen, boolean cautionsRead, Signer signer) {
        return new SessionCommand.OpenInner(
                ID, lockOxygen, Optional.of(meter(O2, "9.5")), cautionsRead, at(), signer);
    }

    SessionCommand shutInner() {
        return new SessionCommand.ShutInner(ID, at());
    }

    SessionCommand notePass(int pass) {
        return new SessionCommand.NotePass(
                ID, pass, new LockPass.Effect(new BigDecimal("14.2"), Duration.ofMinutes(5), true), at());
    }

    SessionCommand openChamber() {
        return openChamber(opening(Optional.of(meter(ROOM, "20.9")), true), LEAD);
    }

    SessionCommand openChamber(OpeningFact opening, Signer signer) {
        return new SessionCommand.OpenChamber(ID, opening,
                List.of(new ArgonUse(ARGON, "LOT 5", new BigDecimal("5010"))), Optional.of(new BigDecimal("5200")),
                at(), signer);
    }

    SessionCommand abandon(Signer signer) {
        return new SessionCommand.Abandon(ID, "drawing withdrawn",
                opening(Optional.of(meter(ROOM, "20.9")), true), List.of(), at(), signer);
    }

    // Facts.

    static ItemFact fact(Item item, Refusal... objections) {
        boolean parts = item.hasTraveller();
        return new ItemFact(item, parts ? Optional.of(KIT) : Optional.empty(),
                parts ? Optional.of("9") : Optional.empty(),
                parts ? Optional.of(Duration.ofHours(30)) : Optional.empty(), false, Optional.empty(),
                List.of(objections));
    }

    static LockNeed sweep() {
        return new LockNeed(LockNeed.Method.SWEEP, Duration.ofMinutes(10), 0, new BigDecimal("50"), Optional.empty());
    }

    static LockNeed cycles(int cycles) {
        return new LockNeed(LockNeed.Method.VACUUM_CYCLES, Duration.ZERO, cycles, new BigDecimal("50"),
                Optional.empty());
    }

    static LockNeed byMeter() {
        return new LockNeed(LockNeed.Method.SWEEP, Duration.ofMinutes(10), 0, new BigDecimal("50"),
                Optional.of(LOCK_O2));
    }

    MeterFact read(SupplyId meter, String value) {
        return new MeterFact(meter, Optional.of(new BigDecimal(value)), Optional.of(now()), List.of(), true);
    }

    static MeterFact meter(SupplyId id, String value, String... troubles) {
        return new MeterFact(
                id, Optional.of(new BigDecimal(value)), Optional.of(origin(0).at()), Arrays.asList(troubles), true);
    }

    static ArgonFact argon(String left, String needed, String oxygenPpm, String moisturePpm) {
        return new ArgonFact(ARGON, "LOT 5", new BigDecimal(left), new BigDecimal(needed), new BigDecimal(oxygenPpm),
                new BigDecimal(moisturePpm));
    }

    static OpeningFact opening(Optional<MeterFact> room, boolean cautionsRead, Refusal... joints) {
        return new OpeningFact(List.of(joints), room, cautionsRead);
    }

    static ListFact list(List<Need> needs) {
        return new ListFact(needs, new TreeSet<>(List.of("9")), PURGE_AND_WORK);
    }

    static Need need(Item item) {
        return new Need(item.kind(), item.label(), item.title(), 1);
    }

    static Item supply(String label, String type) {
        return new Item(Item.Kind.SUPPLY, label, type, type.replace('-', ' '), 1);
    }

    private static Signer signer(String badge, String name, Role role) {
        return new Signer(new BadgeId(badge), name, List.of(role), Optional.empty(), "badge+pin");
    }
}
