package brightseam.weld;

import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.people.SigningRequest;
import brightseam.people.SigningRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What keeps an arc from being struck, each rule by itself. */
final class ArcRules {

    /** The word that a welder's qualification is granted for. */
    static final String QUALIFICATION = "weld";

    private final JointId joint;
    private final Optional<Joint> state;
    private final ArcPurpose purpose;
    private final ArcFacts facts;
    private final Moment now;

    ArcRules(JointId joint, Optional<Joint> state, ArcPurpose purpose, ArcFacts facts, Moment now) {
        this.joint = joint;
        this.state = state;
        this.purpose = purpose;
        this.facts = facts;
        this.now = now;
    }

    /** The plan that the joint follows: that of its first arc, else that of the map's last issue. */
    Optional<WeldMap.Planned> planned() {
        return state.map(known -> new WeldMap.Planned(known.issue(), known.plan())).or(facts::planned);
    }

    List<Refusal> objections() {
        Optional<MapJoint> plan = planned().map(WeldMap.Planned::joint);
        List<Refusal> against = new ArrayList<>();
        if (plan.isEmpty()) {
            against.add(new ArcRefusal.JointNotPlanned(joint));
        }
        state.ifPresent(known -> against.addAll(earlierWork(known)));
        if (purpose == ArcPurpose.REPAIR && state.filter(Joint::isWelded).isEmpty()) {
            against.add(new ArcRefusal.NothingToRepair(joint));
        }
        against.addAll(welder());
        facts.chamber().ifPresentOrElse(chamber -> against.addAll(chamber(chamber)),
                () -> against.add(new ArcRefusal.NoSessionForJoint(joint, joint.kit())));
        plan.ifPresent(known -> {
            against.addAll(backSide(known));
            against.addAll(filler(known));
        });
        against.addAll(parts());
        return against;
    }

    private List<Refusal> earlierWork(Joint known) {
        List<Refusal> against = new ArrayList<>();
        known.running().ifPresent(arc -> against.add(new ArcRefusal.ArcRunning(
                joint, arc.run(), arc.startedAt(), arc.setting().welderName())));
        Optional<Judgement> judged = known.judgement();
        judged.filter(last -> last.verdict() == Verdict.ACCEPT).ifPresent(last ->
                against.add(new ArcRefusal.JointAccepted(joint, last.signer().name(), last.at())));
        if (purpose == ArcPurpose.REPAIR) {
            against.addAll(repair(known, judged));
        } else if (!known.judgements().isEmpty() || known.repairs() > 0) {
            against.add(new ArcRefusal.RepairOnly(joint, purpose));
        }
        return against;
    }

    private List<Refusal> repair(Joint known, Optional<Judgement> judged) {
        List<Refusal> against = new ArrayList<>();
        boolean goesOn = known.lastArc().filter(arc -> arc.purpose() == ArcPurpose.REPAIR).isPresent()
                && known.isHot(now);
        int most = known.plan().jointClass().repairsMax().orElse(Integer.MAX_VALUE);
        if (known.repairs() >= most && !goesOn) {
            against.add(new ArcRefusal.RepairsUsedUp(joint, known.plan().jointClass(), known.repairs()));
        }
        if (judged.filter(last -> last.verdict() == Verdict.REJECT).isPresent() && facts.repairDecided().isEmpty()) {
            against.add(new ArcRefusal.RepairNotDecided(joint));
        }
        return against;
    }

    private List<Refusal> welder() {
        List<Refusal> against = new ArrayList<>(SigningRules.broken(new SigningRequest(
                facts.welder(), Set.of(QUALIFICATION), facts.qualificationNeeded(), now.wall())));
        facts.weldingElsewhere().ifPresent(other ->
                against.add(new ArcRefusal.WelderBusy(joint, facts.welder().badge(), other)));
        return against;
    }

    private List<Refusal> chamber(ChamberFact chamber) {
        if (!chamber.kit().equals(joint.kit())) {
            return List.of(new ArcRefusal.OtherKitInside(joint, chamber.session(), chamber.kit()));
        }
        List<Refusal> against = new ArrayList<>(chamber.notFit().isEmpty() ? gas(chamber) : chamber.notFit());
        if (chamber.argon().isEmpty()) {
            against.add(new ArcRefusal.NoArgonConnected(joint, chamber.session()));
        }
        return against;
    }

    /** Asked where the session finds nothing: it says the same of readings that it found wanting. */
    private List<Refusal> gas(ChamberFact chamber) {
        List<Refusal> against = new ArrayList<>();
        chamber.oxygen().ifPresentOrElse(reading -> oxygen(reading).ifPresent(against::add),
                () -> against.add(new ArcRefusal.OxygenNotKnown(joint, "", "the chamber has no oxygen meter")));
        chamber.moisture().flatMap(this::moisture).ifPresent(against::add);
        return against;
    }

    private Optional<Refusal> oxygen(GasReading reading) {
        if (!reading.usable()) {
            return Optional.of(new ArcRefusal.OxygenNotKnown(joint, reading.meter().value(), trouble(reading)));
        }
        return reading.within() ? Optional.empty() : Optional.of(new ArcRefusal.OxygenTooHigh(
                joint, reading.meter(), reading.ppm().orElseThrow(), reading.ppmMax()));
    }

    private Optional<Refusal> moisture(GasReading reading) {
        if (!reading.usable()) {
            return Optional.of(new ArcRefusal.MoistureNotKnown(joint, reading.meter(), trouble(reading)));
        }
        return reading.within() ? Optional.empty() : Optional.of(new ArcRefusal.MoistureTooHigh(
                joint, reading.meter(), reading.ppm().orElseThrow(), reading.ppmMax()));
    }

    private List<Refusal> backSide(MapJoint plan) {
        if (plan.backSide() == BackSide.OPEN) {
            return List.of();
        }
        List<Refusal> against = new ArrayList<>();
        if (!facts.backSide().confirmed()) {
            against.add(new ArcRefusal.BackSideNotConfirmed(joint, plan.backSide()));
        }
        facts.backSide().oxygen().filter(reading -> !reading.within()).ifPresent(reading ->
                against.add(reading.usable()
                        ? new ArcRefusal.BackSideTooHigh(
                                joint, reading.meter(), reading.ppm().orElseThrow(), reading.ppmMax())
                        : new ArcRefusal.BackSideNotKnown(joint, reading.meter(), trouble(reading))));
        return against;
    }

    /** A tack may melt the edges alone; whatever is added is of the planned class and was checked in. */
    private List<Refusal> filler(MapJoint plan) {
        Optional<String> planned = plan.filler().map(FillerClass::printed);
        if (facts.filler().isEmpty()) {
            return planned.isPresent() && purpose != ArcPurpose.TACK
                    ? List.of(new ArcRefusal.FillerNeeded(joint, planned.orElseThrow())) : List.of();
        }
        FillerFact filler = facts.filler().orElseThrow();
        List<Refusal> against = new ArrayList<>();
        if (planned.isEmpty()) {
            against.add(new ArcRefusal.FillerNotPlanned(joint, filler.label()));
        } else if (!filler.fillerClass().equals(plan.filler())) {
            String found = filler.fillerClass().map(FillerClass::printed).orElse("of no known class");
            against.add(new ArcRefusal.WrongFiller(joint, filler.label(), found, planned.orElseThrow()));
        }
        if (!filler.inside()) {
            against.add(new ArcRefusal.FillerNotInside(joint, filler.label()));
        }
        return against;
    }

    private List<Refusal> parts() {
        List<Refusal> against = new ArrayList<>();
        List<JointPart> unknown = facts.parts().stream().filter(part -> part.traveller().isEmpty())
                .map(PartFact::part).toList();
        List<TravellerId> outside = facts.parts().stream().filter(part -> !part.inside())
                .flatMap(part -> part.traveller().stream()).distinct().sorted().toList();
        if (!unknown.isEmpty()) {
            against.add(new ArcRefusal.PiecesNotReleased(joint, unknown));
        }
        if (!outside.isEmpty()) {
            against.add(new ArcRefusal.PiecesNotInside(joint, outside));
        }
        Stream<Refusal> own = facts.parts().stream().flatMap(part -> part.against().stream()).distinct();
        own.forEach(against::add);
        return against;
    }

    private static String trouble(GasReading reading) {
        return reading.trouble().orElse("it was never heard");
    }
}
