package brightseam.traveller.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.traveller.ArcFact;
import brightseam.traveller.Contact;
import brightseam.traveller.Joined;
import brightseam.traveller.JointFact;
import brightseam.traveller.JudgedFact;
import brightseam.traveller.LockPassFact;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.Photograph;
import brightseam.traveller.Signature;
import brightseam.traveller.SpanFact;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.TravellerEvent.*;
import brightseam.traveller.WindowEnd;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** What the chamber writes into travellers, with every field filled, and the odd forms. */
final class ChamberSamples {

    private static final SessionId SESSION = new SessionId("CS-0012");
    private static final JointId JOINT = JointId.parse("K-07.J03");
    private static final StepId WELD = new StepId("weld");
    private static final StationId CHAMBER = new StationId("S-CHAMBER-1");
    private static final StationId LOCK = new StationId("S-LOCK-1");
    private static final TravellerId LOT = new TravellerId("T-1042");
    private static final BadgeId WELDER = new BadgeId("P-0007");

    private ChamberSamples() {}

    static List<TravellerEvent> all(Origin bench, Signature rejected) {
        List<Joined> parts = List.of(new Joined(LOT, List.of(1, 2)), Joined.lot(new TravellerId("T-1043")));
        List<Contact> contacts = List.of(new Contact(ContactKind.ARGON, "argon-cylinder", "A-0031", "AR 90-117"),
                new Contact(ContactKind.GAUGE, "oxygen-meter", "G-0701", "SN 4471"));
        return List.of(
                new EnteredChamber(bench, SESSION, LOCK, "lock pass 1"),
                new LockPassed(bench, lockPass(bench.at())),
                new LockPassed(bench, new LockPassFact(SESSION, LOCK, 2, false, bench.at(), bench.at(), "none",
                        Optional.empty(), Optional.empty(), List.of(LOT), false)),
                new ArcBegun(bench, WELD, 1, new ArcFact(JOINT, SESSION, CHAMBER, 1, parts, "ERTi-2", WELDER,
                        "purged", contacts, false)),
                new JointWelded(bench, WELD, 1, joint(bench.at(), parts, contacts)),
                new JointJudged(bench, WELD, verdict(parts), rejected),
                new NonconformanceOpened(bench, 4, Cause.JOINT_EXCURSION, WELD, 1, List.of(1, 2),
                        "K-07.J03, run 1: oxygen above 30.0 ppm for 4.0 s", Optional.empty()),
                new NonconformanceOpened(bench, 5, Cause.JOINT_UNPROVEN, WELD, 1, List.of(1), "no usable reading",
                        Optional.empty()),
                new NonconformanceOpened(bench, 6, Cause.JOINT_REJECTED, WELD, 1, List.of(1), "dark blue",
                        Optional.of(rejected)),
                new WindowEnded(bench, WindowEnd.WELDED));
    }

    private static LockPassFact lockPass(Moment at) {
        return new LockPassFact(SESSION, LOCK, 1, true, at, at.plus(Duration.ofMinutes(9)), "3 cycles",
                Optional.of(new BigDecimal("22.0")), Optional.of(new BigDecimal("14.5")), List.of(LOT), true);
    }

    private static JointFact joint(Moment at, List<Joined> parts, List<Contact> contacts) {
        SpanFact above = new SpanFact(at.plus(Duration.ofMillis(6_250)), at.plus(Duration.ofMillis(10_250)),
                Optional.of(new BigDecimal("48.0")));
        SpanFact gap = new SpanFact(at.plus(Duration.ofSeconds(12)), at.plus(Duration.ofSeconds(15)), Optional.empty());
        return new JointFact(JOINT, SESSION, CHAMBER, 1, at, at.plus(Duration.ofSeconds(20)),
                at.plus(Duration.ofSeconds(110)), parts, "ERTi-2", WELDER, "purged", new SupplyId("G-0701"),
                new BigDecimal("30.0"), new BigDecimal("48.0"), new BigDecimal("12.1"), new BigDecimal("4.0"),
                List.of(above), List.of(gap), false, "ab".repeat(32), contacts, true);
    }

    private static JudgedFact verdict(List<Joined> parts) {
        return new JudgedFact(JOINT, SESSION, 1, parts, "dark blue", false, List.of("undercut 0.2 mm"),
                "Workshop specification HDF-W-3, revision 2", "1100 lx at the joint", "Repair once",
                List.of(new Photograph("J03 root", "cd".repeat(32))));
    }
}
