package brightseam.weld.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.ChamberWork;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.Joint;
import brightseam.weld.JointStanding;
import brightseam.weld.JointsRefusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.springframework.stereotype.Component;

/** What the joints of a traveller's pieces have against passing its weld step and the inspection behind it. */
@Component
class JointWork implements ChamberWork {

    private final Joints joints;
    private final MapPieces pieces;
    private final Travellers travellers;

    JointWork(Joints joints, MapPieces pieces, Travellers travellers) {
        this.joints = joints;
        this.pieces = pieces;
        this.travellers = travellers;
    }

    @Override
    public List<Refusal> objections(TravellerId traveller, Step step, Moment now) {
        Optional<Card> card = travellers.find(traveller);
        Optional<Step> weld = card.flatMap(known -> weldStep(known.procedure()));
        if (weld.isEmpty()) {
            return List.of();
        }
        Procedure procedure = card.orElseThrow().procedure();
        KitId kit = card.orElseThrow().traveller().kit();
        if (step.id().equals(weld.get().id())) {
            return atWelding(traveller, kit);
        }
        boolean behind = step.isInspectionPoint()
                && procedure.position(step.id()) > procedure.position(weld.get().id());
        return behind ? atInspection(traveller, kit, now) : List.of();
    }

    private List<Refusal> atWelding(TravellerId traveller, KitId kit) {
        List<JointView> mine = mine(traveller, kit);
        if (mine.isEmpty()) {
            return List.of(new JointsRefusal.NoJointPlanned(traveller, kit));
        }
        List<String> bare = numbers(mine, view -> view.joint().filter(Joint::isWelded).isEmpty());
        List<String> open = numbers(mine, view -> view.joint().filter(Joint::isWelded)
                .filter(joint -> !joint.isSettled()).isPresent());
        List<Refusal> against = new ArrayList<>();
        if (!bare.isEmpty()) {
            against.add(new JointsRefusal.JointsNotWelded(traveller, bare));
        }
        if (!open.isEmpty()) {
            against.add(new JointsRefusal.JointsNotProven(traveller, open));
        }
        return against;
    }

    private List<Refusal> atInspection(TravellerId traveller, KitId kit, Moment now) {
        List<String> open = numbers(mine(traveller, kit), view ->
                view.joint().filter(joint -> joint.standing(now) == JointStanding.ACCEPTED).isEmpty());
        return open.isEmpty() ? List.of() : List.of(new JointsRefusal.JointsNotAccepted(traveller, open));
    }

    private List<JointView> mine(TravellerId traveller, KitId kit) {
        return joints.ofKit(kit).stream()
                .filter(view -> pieces.holders(kit, view.plan().parts()).containsValue(traveller)).toList();
    }

    private static List<String> numbers(List<JointView> views, Predicate<JointView> which) {
        return views.stream().filter(which).map(view -> view.id().number()).toList();
    }

    private static Optional<Step> weldStep(Procedure procedure) {
        return procedure.steps().stream().filter(step -> step.kind() == StepKind.WELD && step.inSession())
                .findFirst();
    }
}
