package brightseam.procedure;

import brightseam.kernel.StepId;
import java.util.List;
import java.util.Optional;

/**
 * One revision of a procedure: the route of a lot of identical pieces from the saw to the transfer lock.
 *
 * @param ref name, revision letter and content hash
 * @param title what people call it
 * @param scope what it is for and what it is not for, in a sentence or two
 * @param grades titanium grades it may be used on, such as {@code "9"}
 * @param steps the route in order, at least one
 * @param window how long parts stay clean, which step opens that and which one closes it
 * @param touchReturnsTo where a reported touch sends the pieces while the clean window is open
 * @param sources where the values come from, by the key that steps cite
 */
public record Procedure(
        ProcedureRef ref,
        String title,
        String scope,
        List<String> grades,
        List<Step> steps,
        CleanWindow window,
        StepId touchReturnsTo,
        List<Source> sources) {

    /** Copies the lists. */
    public Procedure {
        grades = List.copyOf(grades);
        steps = List.copyOf(steps);
        sources = List.copyOf(sources);
    }

    /**
     * The step named {@code id}.
     *
     * @throws IllegalArgumentException where this procedure has no such step
     */
    public Step step(StepId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException(ref.id() + " has no step " + id));
    }

    /** The step named {@code id}, where there is one. */
    public Optional<Step> find(StepId id) {
        return steps.stream().filter(step -> step.id().equals(id)).findFirst();
    }

    /** The names of the steps in order. */
    public List<StepId> route() {
        return steps.stream().map(Step::id).toList();
    }

    /**
     * What the pieces' surface is like at the step named {@code id}: cleaned from the first step on at which new gloves
     * are asked for by scan.
     */
    public Surface surface(StepId id) {
        boolean cleaned = steps.subList(0, position(id) + 1).stream().flatMap(step -> step.uses().stream())
                .anyMatch(Use::change);
        return cleaned ? Surface.CLEANED : Surface.UNCLEANED;
    }

    /** The position of {@code id} in the route from 0, or -1. */
    public int position(StepId id) {
        return route().indexOf(id);
    }
}
