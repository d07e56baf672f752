package brightseam.weld.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static brightseam.weld.Weld.JOINT;
import static brightseam.weld.Weld.KIT;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.weld.ArcPurpose;
import brightseam.weld.ArcSetting;
import brightseam.weld.ArgonFact;
import brightseam.weld.BackSide;
import brightseam.weld.ColoursSeen;
import brightseam.weld.FindingNote;
import brightseam.weld.GasReading;
import brightseam.weld.HotSpan;
import brightseam.weld.HotStretch;
import brightseam.weld.JointClass;
import brightseam.weld.JointEvent;
import brightseam.weld.Judgement;
import brightseam.weld.Lighting;
import brightseam.weld.MapJoint;
import brightseam.weld.MapSheet;
import brightseam.weld.Ruling;
import brightseam.weld.Spot;
import brightseam.weld.Verdict;
import brightseam.weld.Weld;
import brightseam.weld.WeldMapEvent;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WeldEventsTest {

    private static final MapJoint OPEN = new MapJoint("J04", "Boss to plate", JointClass.C, Weld.plan().parts(),
            BackSide.OPEN, Optional.of("solid"), Optional.empty(), Weld.COOLING, "shop-a", Optional.empty());

    @Test
    void every_event_of_a_map_is_written_as_approved() {
        ApprovedEvents.check("weld-map-events.txt", WeldMapStreams.TYPES, WeldMapStreams.KIND.codec(), List.of(
                new WeldMapEvent.Begun(ORIGIN, KIT, new MapSheet("HDF-3200 C", Optional.empty(), List.of())),
                new WeldMapEvent.Redrawn(ORIGIN, KIT, new MapSheet("HDF-3200 C", Optional.of("0".repeat(64)),
                        List.of(Weld.plan(), OPEN))),
                new WeldMapEvent.JointMoved(ORIGIN, KIT, "J03", new Spot(10, 1000)),
                new WeldMapEvent.Issued(ORIGIN, KIT, 1, Weld.LEAD)));
    }

    @Test
    void every_event_of_a_joint_is_written_as_approved() {
        Instant at = ORIGIN.at().wall();
        HotSpan span = new HotSpan(at, at.plusSeconds(3), new BigDecimal("3.0"), Optional.of(new BigDecimal("44.0")));
        HotSpan gap = new HotSpan(at, at.plusSeconds(9), new BigDecimal("9.0"), Optional.empty());
        ApprovedEvents.check("joint-events.txt", JointStreams.TYPES, JointStreams.KIND.codec(), List.of(
                new JointEvent.Begun(ORIGIN, JOINT, 2, Weld.plan()),
                new JointEvent.ArcStarted(ORIGIN, JOINT, 1, ArcPurpose.TACK, bare()),
                new JointEvent.ArcStarted(ORIGIN, JOINT, 2, ArcPurpose.WELD, full()),
                new JointEvent.ArcStopped(ORIGIN, JOINT, 2),
                new JointEvent.EvidenceTaken(ORIGIN, JOINT, 2, HotStretch.ARC, Weld.evidence(false, List.of(span))),
                new JointEvent.EvidenceTaken(ORIGIN, JOINT, 2, HotStretch.COOLING, new brightseam.weld.GasEvidence(
                        Weld.OXYGEN_METER, at, at, new BigDecimal("20"), Optional.empty(), Optional.empty(),
                        new BigDecimal("0.0"), List.of(), List.of(gap), new BigDecimal("5.0"), 0, 0, "0".repeat(64),
                        false)),
                new JointEvent.Judged(ORIGIN, JOINT, judgement(Verdict.ACCEPT, Optional.empty(), Optional.empty())),
                new JointEvent.Judged(ORIGIN, JOINT, judgement(Verdict.REJECT, Optional.of("as seen"),
                        Optional.of("Use as is, N-1")))));
    }

    private static ArcSetting bare() {
        return new ArcSetting(Weld.SESSION, new StationId("CH-01"), new BadgeId("P-0007"), "Wim Welder",
                Optional.empty(), Optional.empty(), BackSide.VENTED, Optional.empty(), Weld.oxygen("8.2"),
                Optional.empty(), new ArgonFact(new SupplyId("A-0005"), "AR-7781"), List.of(Weld.LEG, Weld.LUG),
                Duration.ofSeconds(5), false);
    }

    private static ArcSetting full() {
        GasReading wet = new GasReading(new SupplyId("G-0202"), Optional.of(new BigDecimal("12.5")),
                new BigDecimal("39"), Optional.empty());
        return new ArcSetting(Weld.SESSION, new StationId("CH-01"), new BadgeId("P-0007"), "Wim Welder",
                Optional.of(Instant.parse("2031-12-31T23:00:00Z")), Optional.of("T-1050"), BackSide.PURGED,
                Optional.of(Weld.oxygen("11")), Weld.oxygen("8.2"), Optional.of(wet),
                new ArgonFact(new SupplyId("A-0005"), "AR-7781"), List.of(Weld.LEG, Weld.LUG),
                Duration.ofMillis(2500), true);
    }

    private static Judgement judgement(Verdict verdict, Optional<String> remark, Optional<String> useAsIs) {
        return new Judgement(2, verdict, new ColoursSeen(true, List.of("silver"), Optional.of("bronze")),
                List.of(new FindingNote("undercut", "0.1 mm")),
                new Lighting(new BigDecimal("1200"), Weld.LIGHT_METER), List.of("0".repeat(64)), remark, "shop-a",
                Ruling.CONDITIONAL, List.of("measure its depth"), useAsIs, Weld.INSPECTOR, ORIGIN.at());
    }
}
