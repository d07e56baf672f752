package brightseam.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects every broken rule of one command, then answers with the refusals or, where there are none, the events. */
public final class Rules {

    private final List<Refusal> broken = new ArrayList<>();

    private Rules() {}

    /** Starts with nothing broken. */
    public static Rules check() {
        return new Rules();
    }

    /** Adds {@code refusal} where {@code broken}; it is only made then. */
    public Rules refuseIf(boolean broken, Supplier<? extends Refusal> refusal) {
        if (broken) {
            this.broken.add(refusal.get());
        }
        return this;
    }

    /** Adds {@code refusal} where there is one. */
    public Rules refuseFor(Optional<? extends Refusal> refusal) {
        refusal.ifPresent(broken::add);
        return this;
    }

    /** Adds all of {@code refusals}. */
    public Rules refuseAll(List<? extends Refusal> refusals) {
        broken.addAll(refusals);
        return this;
    }

    /** Accepts with the events that {@code events} makes, only where no rule was broken. */
    public <E> Decision<E> acceptWith(Supplier<? extends List<? extends E>> events) {
        return broken.isEmpty() ? Decision.accepted(events.get()) : Decision.refused(broken);
    }

    /** Accepts with {@code events} where no rule was broken, else refuses for all of them. */
    public <E> Decision<E> accept(List<? extends E> events) {
        return broken.isEmpty() ? Decision.accepted(events) : Decision.refused(broken);
    }

    /** Accepts with one event where no rule was broken, else refuses for all of them. */
    public <E> Decision<E> accept(E event) {
        return accept(List.of(event));
    }
}
