package brightseam.weld;

import brightseam.kernel.Moment;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Makes the next state of a joint out of an event. */
final class JointFold {

    private JointFold() {}

    static Joint evolve(Optional<Joint> before, JointEvent event) {
        return switch (event) {
            case JointEvent.Begun e -> new Joint(e.joint(), e.issue(), e.plan(), List.of(), List.of());
            case JointEvent.ArcStarted e -> started(known(before, e), e);
            case JointEvent.ArcStopped e -> change(known(before, e), e.run(), arc -> arc.stopped(e.origin().at()));
            case JointEvent.EvidenceTaken e ->
                change(known(before, e), e.run(), arc -> arc.with(e.stretch(), e.evidence()));
            case JointEvent.Judged e -> judged(known(before, e), e);
        };
    }

    private static Joint known(Optional<Joint> before, JointEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not begun: " + event.joint()));
    }

    private static Joint started(Joint joint, JointEvent.ArcStarted event) {
        Moment at = event.origin().at();
        Moment hotFrom = joint.coolAt().filter(at::isBefore)
                .flatMap(hot -> joint.lastArc().flatMap(Arc::stoppedAt)).orElse(at);
        Arc arc = new Arc(event.run(), event.purpose(), event.setting(), at, hotFrom, Optional.empty(),
                Optional.empty(), Optional.empty());
        return new Joint(joint.id(), joint.issue(), joint.plan(),
                Stream.concat(joint.arcs().stream(), Stream.of(arc)).toList(), joint.judgements());
    }

    private static Joint change(Joint joint, int run, UnaryOperator<Arc> changing) {
        return new Joint(joint.id(), joint.issue(), joint.plan(),
                joint.arcs().stream().map(arc -> arc.run() == run ? changing.apply(arc) : arc).toList(),
                joint.judgements());
    }

    private static Joint judged(Joint joint, JointEvent.Judged e) {
        return new Joint(joint.id(), joint.issue(), joint.plan(), joint.arcs(),
                Stream.concat(joint.judgements().stream(), Stream.of(e.judgement())).toList());
    }
}
