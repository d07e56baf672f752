package brightseam.weld.shell;

import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.shell.Readings;
import brightseam.kernel.BadgeId;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Versioned;
import brightseam.material.shell.Heats;
import brightseam.people.Person;
import brightseam.people.shell.People;
import brightseam.people.shell.SignedWork;
import brightseam.procedure.StepKind;
import brightseam.traveller.Disposition;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.ArcFacts;
import brightseam.weld.BackSideFact;
import brightseam.weld.ChamberFact;
import brightseam.weld.FillerClass;
import brightseam.weld.FillerFact;
import brightseam.weld.GasReading;
import brightseam.weld.Joint;
import brightseam.weld.JointPart;
import brightseam.weld.MapJoint;
import brightseam.weld.PartFact;
import brightseam.weld.WeldMap;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Gathers it from registers, meters and the session. */
@Component
class SurroundingsOfShop implements Surroundings {

    /** Every welder is qualified, whatever else the shop asks for. */
    private static final Set<String> QUALIFICATION_NEEDED = Set.of("weld");

    private final WeldMaps maps;
    private final MapPieces pieces;
    private final JointRows joints;
    private final ObjectProvider<ChamberNow> chambers;
    private final Readings readings;
    private final Travellers travellers;
    private final People people;
    private final Heats heats;
    private final SignedWork work;

    SurroundingsOfShop(WeldMaps maps, MapPieces pieces, JdbcClient jdbc, ObjectProvider<ChamberNow> chambers,
            Readings readings, Travellers travellers, People people, Heats heats, SignedWork work) {
        this.work = work;
        this.maps = maps;
        this.pieces = pieces;
        this.joints = new JointRows(jdbc);
        this.chambers = chambers;
        this.readings = readings;
        this.travellers = travellers;
        this.people = people;
        this.heats = heats;
    }

    @Override
    public Optional<Person> person(BadgeId badge) {
        return people.find(badge);
    }

    @Override
    public List<Refusal> againstJudging(BadgeId badge, Moment now) {
        return List.copyOf(work.objections(badge, SignedWork.JOINT_JUDGEMENT, now.wall()));
    }

    @Override
    public Optional<ChamberNow.Inside> inside(JointId joint, Moment now) {
        return chambers.stream().flatMap(one -> one.of(joint.kit(), now).stream()).findFirst();
    }

    @Override
    public ArcFacts facts(JointId id, Optional<Joint> joint, ArcRequest request, Person welder, Moment now) {
        Optional<WeldMap.Planned> planned =
                maps.find(id.kit()).map(Versioned::state).flatMap(map -> map.planned(id.number()));
        Optional<ChamberNow.Inside> inside = inside(id, now);
        Optional<MapJoint> plan = joint.map(Joint::plan).or(() -> planned.map(WeldMap.Planned::joint));
        return new ArcFacts(planned, inside.map(ChamberNow.Inside::chamber), welder, QUALIFICATION_NEEDED,
                request.filler().map(label -> filler(label, inside)),
                new BackSideFact(request.backSideConfirmed(), inside.flatMap(this::backSide)),
                plan.map(known -> parts(id, known, inside)).orElse(List.of()),
                joints.runningBy(welder.badge()).filter(other -> !other.equals(id)),
                joint.flatMap(known -> decided(known, Disposition.REPAIR)));
    }

    @Override
    public Optional<String> decided(Joint joint, Disposition disposition) {
        List<Nonconformance> rejections = joint.lastArc().stream()
                .flatMap(arc -> pieces.joined(joint.id().kit(), joint.plan()).stream()
                        .flatMap(part -> travellers.find(part.traveller()).stream())
                        .flatMap(card -> card.traveller().nonconformances().stream())
                        .filter(one -> one.cause() == Nonconformance.Cause.JOINT_REJECTED
                                && one.text().startsWith(joint.id() + ", run " + arc.run() + ":")))
                .toList();
        boolean all = !rejections.isEmpty() && rejections.stream().allMatch(one ->
                one.decision().filter(decision -> decision.disposition() == disposition).isPresent());
        return all ? rejections.getLast().decision().map(decision ->
                decision.signature().signer().name() + ": " + decision.reason()) : Optional.empty();
    }

    private List<PartFact> parts(JointId id, MapJoint plan, Optional<ChamberNow.Inside> inside) {
        Map<JointPart, TravellerId> holders = pieces.holders(id.kit(), plan.parts());
        List<TravellerId> there = inside.map(ChamberNow.Inside::inside).orElse(List.of());
        return plan.parts().stream().map(part -> new PartFact(part, Optional.ofNullable(holders.get(part)),
                Optional.ofNullable(holders.get(part)).filter(there::contains).isPresent(), List.of())).toList();
    }

    /** Something is filler where its procedure does not weld it: a tube of the right grade is none. */
    private FillerFact filler(TravellerId label, Optional<ChamberNow.Inside> inside) {
        Optional<FillerClass> found = travellers.find(label).filter(SurroundingsOfShop::isFiller)
                .flatMap(card -> heats.find(card.traveller().heat())).map(Versioned::state)
                .flatMap(heat -> FillerClass.ofGrade(heat.grade()));
        return new FillerFact(label.value(), found,
                inside.filter(there -> there.inside().contains(label)).isPresent());
    }

    static boolean isFiller(Card card) {
        return card.procedure().steps().stream().noneMatch(step -> step.kind() == StepKind.WELD);
    }

    private Optional<GasReading> backSide(ChamberNow.Inside inside) {
        ChamberFact chamber = inside.chamber();
        Optional<BigDecimal> limit = chamber.oxygen().map(GasReading::ppmMax);
        return limit.flatMap(most -> readings.now(chamber.chamber(), MeterPlace.BACK_SIDE, MeterQuantity.OXYGEN_PPM)
                .map(meter -> ArcReadings.reading(meter, most)));
    }
}
