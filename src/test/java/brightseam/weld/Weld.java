package brightseam.weld;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.Samples;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.people.Person;
import brightseam.people.Qualification;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A joint at a bench of its own: commands go in one after another, seconds pass in between. */
public final class Weld {

    public static final KitId KIT = new KitId("K-0047");
    public static final JointId JOINT = new JointId(KIT, "J03");
    public static final SessionId SESSION = new SessionId("CS-0012");
    public static final SupplyId OXYGEN_METER = new SupplyId("G-0201");
    public static final SupplyId LIGHT_METER = new SupplyId("G-0301");
    public static final TravellerId LEG = new TravellerId("T-1042");
    public static final TravellerId LUG = new TravellerId("T-1043");
    public static final Cooling COOLING =
            new Cooling(Duration.ofMinutes(10), "below 427 degrees Celsius", "trial of 12 March");
    public static final Signer INSPECTOR = new Signer(
            new BadgeId("P-0009"), "Ida Inspector", List.of(Role.INSPECTOR), Optional.of("7"), "badge+pin");
    public static final Signer LEAD =
            new Signer(new BadgeId("P-0002"), "Lena Lead", List.of(Role.LEAD), Optional.empty(), "badge+pin");
    public static final ColourScale SCALE = scale();

    private Optional<Joint> joint = Optional.empty();
    private long second;

    /** A joint of class A that asks for filler and a purged back side. */
    public static MapJoint plan() {
        return plan(JointClass.A, COOLING);
    }

    /** The same of another class, cooling in another way. */
    public static MapJoint plan(JointClass jointClass, Cooling cooling) {
        return new MapJoint("J03", "Lug to leg", jointClass, List.of(new JointPart(1, 1), new JointPart(4, 2)),
                BackSide.PURGED, Optional.empty(), Optional.of(FillerClass.ERTI_9), cooling, "shop-a",
                Optional.of(new Spot(400, 250)));
    }

    /** A welder, qualified until one day after the tests' morning. */
    public static Person welder() {
        return new Person(new BadgeId("P-0007"), "Wim Welder", List.of(Role.FABRICATOR), Optional.empty(),
                List.of(new Qualification("weld", Instant.parse("2031-03-05T08:00:00Z"))), true, true, false);
    }

    /** What the oxygen meter says. */
    public static GasReading oxygen(String ppm) {
        return new GasReading(OXYGEN_METER, Optional.of(new BigDecimal(ppm)), new BigDecimal("20"), Optional.empty());
    }

    /** A chamber that is fit. */
    public static ChamberFact fit() {
        return chamber(List.of(), Optional.of(oxygen("8.2")));
    }

    /** A chamber with that against it and that oxygen. */
    public static ChamberFact chamber(List<Refusal> notFit, Optional<GasReading> oxygen) {
        return new ChamberFact(SESSION, KIT, new StationId("CH-01"), notFit, oxygen, Optional.empty(),
                Optional.of(new ArgonFact(new SupplyId("A-0005"), "AR-7781")), Duration.ofSeconds(5), true);
    }

    /** Facts that nothing stands against. */
    public static ArcFacts good() {
        return facts(plan(), fit(), Optional.of(wire()), new BackSideFact(true, Optional.empty()), pieces());
    }

    /** Facts with these parts. */
    public static ArcFacts facts(MapJoint plan, ChamberFact chamber, Optional<FillerFact> filler, BackSideFact back,
            List<PartFact> parts) {
        return new ArcFacts(Optional.of(new WeldMap.Planned(1, plan)), Optional.of(chamber), welder(), Set.of("weld"),
                filler, back, parts, Optional.empty(), Optional.empty());
    }

    /** The right filler, inside. */
    public static FillerFact wire() {
        return new FillerFact("T-1050", Optional.of(FillerClass.ERTI_9), true);
    }

    /** Both pieces, inside. */
    public static List<PartFact> pieces() {
        return List.of(new PartFact(new JointPart(1, 1), Optional.of(LEG), true, List.of()),
                new PartFact(new JointPart(4, 2), Optional.of(LUG), true, List.of()));
    }

    /** Evidence that nothing can be said against. */
    public static GasEvidence clean() {
        return evidence(true, List.of());
    }

    /** Evidence with these excursions. */
    public static GasEvidence evidence(boolean proven, List<HotSpan> excursions) {
        Instant from = Samples.ORIGIN.at().wall();
        return new GasEvidence(OXYGEN_METER, from, from.plusSeconds(60), new BigDecimal("20"),
                Optional.of(new BigDecimal("9.1")), Optional.of(new BigDecimal("8.4")), new BigDecimal("0.0"),
                excursions, List.of(), new BigDecimal("5.0"), 60, 0, "0".repeat(64), proven);
    }

    private static ColourScale scale() {
        List<WeldColour> colours = List.of(new WeldColour("silver", "Silver", "#dddddd", "plain"),
                new WeldColour("bronze", "Bronze", "#aa7733", "dots-dense"),
                new WeldColour("white", "White", "#ffffff", "flakes"));
        AcceptanceTable.Row fine = new AcceptanceTable.Row(Ruling.ACCEPT, Optional.empty());
        AcceptanceTable.Row maybe =
                new AcceptanceTable.Row(Ruling.CONDITIONAL, Optional.of("the lead has to accept bronze by name"));
        AcceptanceTable.Row bad = new AcceptanceTable.Row(Ruling.REJECT, Optional.of("remove all of the weld"));
        AcceptanceTable table = new AcceptanceTable("shop-a", "Shop's table A", List.of("of the test"),
                java.util.Map.of("silver", fine, "bronze", maybe, "white", bad),
                java.util.Map.of("silver", fine, "bronze", fine, "white", bad));
        return new ColourScale(colours, List.of(table), List.of(
                new FindingKind("crack", "Crack in the base metal", Ruling.REJECT, false,
                        Optional.of("no repair"), "of the test"),
                new FindingKind("lack-of-fusion", "Lack of fusion", Ruling.REJECT, true,
                        Optional.of("decide on a repair"), "of the test"),
                new FindingKind("undercut", "Undercut", Ruling.CONDITIONAL, true,
                        Optional.of("measure its depth"), "of the test")), new BigDecimal("1000"), "of the test");
    }

    /** The time now. */
    public Moment now() {
        return origin().at();
    }

    /** An origin of this moment. */
    public Origin origin() {
        return Samples.origin(second);
    }

    /** The state. */
    public Joint state() {
        return joint.orElseThrow();
    }

    /** The state, where there is one. */
    public Optional<Joint> known() {
        return joint;
    }

    /** Lets time pass. */
    public Weld passes(long seconds) {
        second += seconds;
        return this;
    }

    /** Carries out what must be accepted. */
    public Weld does(JointCommand command) {
        Decision<JointEvent> decision = JointDecider.decide(joint, command);
        if (!(decision instanceof Decision.Accepted<JointEvent> accepted)) {
            throw new AssertionError(decision);
        }
        accepted.events().forEach(event -> joint = Optional.of(Joint.evolve(joint, event)));
        return this;
    }

    /** Strikes an arc. */
    public Weld starts(ArcPurpose purpose) {
        return does(start(purpose, good()));
    }

    /** Strikes an arc with a plan of its own. */
    public Weld starts(ArcPurpose purpose, MapJoint plan) {
        return does(start(purpose,
                facts(plan, fit(), Optional.of(wire()), new BackSideFact(true, Optional.empty()), pieces())));
    }

    /** Ends it. */
    public Weld stops() {
        return does(new JointCommand.StopArc(JOINT, origin()));
    }

    /** Takes every evidence that is owed now. */
    public Weld proves() {
        state().owed(now()).forEach(owed -> does(
                new JointCommand.TakeEvidence(JOINT, owed.run(), owed.stretch(), clean(), origin())));
        return this;
    }

    /** Welded, cooled and proven. */
    public Weld welded() {
        return starts(ArcPurpose.WELD).passes(60).stops().passes(5).proves().passes(600).proves();
    }

    /** Asks for an arc now. */
    public JointCommand start(ArcPurpose purpose, ArcFacts facts) {
        return new JointCommand.StartArc(JOINT, purpose, facts, origin());
    }

    /** Asks for a judgement now. */
    public JointCommand.Judge judge(Verdict verdict, String colour, FindingNote... findings) {
        return judge(verdict, new ColoursSeen(true, List.of(colour), Optional.empty()), List.of(findings),
                Optional.empty(), Optional.empty());
    }

    /** The same with everything that may differ. */
    public JointCommand.Judge judge(Verdict verdict, ColoursSeen colours, List<FindingNote> findings,
            Optional<String> remark, Optional<String> useAsIs) {
        return new JointCommand.Judge(JOINT, verdict, colours, findings,
                new Lighting(new BigDecimal("1200"), LIGHT_METER), List.of(), remark,
                new JudgeFacts(SCALE, List.of(), List.of(), useAsIs), INSPECTOR, origin());
    }

    /** What is refused, as codes. */
    public List<String> refused(JointCommand command) {
        return switch (JointDecider.decide(joint, command)) {
            case Decision.Accepted<JointEvent> accepted -> List.of();
            case Decision.Refused<JointEvent> refused ->
                refused.refusals().stream().map(Refusal::code).toList();
        };
    }
}
