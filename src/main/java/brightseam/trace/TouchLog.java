package brightseam.trace;

import brightseam.kernel.StepId;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Every contact of one traveller, in the order in which contact began; made from its events. */
public final class TouchLog {

    private final List<Touch> touches = new ArrayList<>();

    private TouchLog() {}

    /** The contacts that {@code record}, a whole record in order, tells of. */
    public static TouchLog of(List<TravellerEvent> record) {
        TouchLog log = new TouchLog();
        Optional<Traveller> state = Optional.empty();
        for (TravellerEvent event : record) {
            Touches.of(state, event).forEach(log::apply);
            state = Optional.of(state.map(before -> before.after(List.of(event)))
                    .orElseGet(() -> Traveller.fold(List.of(event)).orElseThrow()));
        }
        return log;
    }

    /** All of them. */
    public List<Touch> touches() {
        return List.copyOf(touches);
    }

    private void apply(TouchChange change) {
        switch (change) {
            case TouchChange.Began began -> touches.add(began.touch());
            case TouchChange.Handled handled -> handle(handled.touch());
            case TouchChange.WasAtJoint was -> atJoint(was.touch());
            case TouchChange.LeftBin left -> end(left.at(), touch -> touch.thing().kind() == ThingKind.BIN);
            case TouchChange.LiftedOut out -> end(out.at(), touch ->
                    touch.thing().kind().endsWithHold() && touch.isAt(out.step(), out.pass()));
            case TouchChange.StepOver over -> end(over.at(), touch ->
                    touch.thing().kind().isOfStep() && touch.isAt(over.step(), over.pass()));
            case TouchChange.Parted parted -> touches.replaceAll(touch -> touch.without(parted.pieces()));
        }
    }

    private void handle(Touch now) {
        for (int i = 0; i < touches.size(); i++) {
            Touch known = touches.get(i);
            if (known.isLike(now)) {
                touches.set(i, known.lasting(now.from()));
                return;
            }
        }
        touches.add(now);
    }

    private void atJoint(Touch was) {
        for (int i = 0; i < touches.size(); i++) {
            Touch known = touches.get(i);
            if (known.isLike(was) && (known.until().isEmpty() || known.from().equals(was.from()))) {
                touches.set(i, known.lasting(was.until().orElseThrow()));
                return;
            }
        }
        touches.add(was);
    }

    private void end(Instant at, Predicate<Touch> which) {
        touches.replaceAll(touch -> touch.until().isEmpty() && which.test(touch) ? touch.lasting(at) : touch);
    }
}
