package brightseam.report;

import brightseam.procedure.Step;
import java.util.List;

/**
 * One step with every pass, superseded ones too, oldest first.
 *
 * @param step as the released revision has it
 * @param passes none where it was never begun
 */
public record StepPage(Step step, List<Pass> passes) {

    /** Copies the list. */
    public StepPage {
        passes = List.copyOf(passes);
    }

    /** Whether the pass that counts is signed. */
    public boolean isSigned() {
        return passes.stream().anyMatch(pass -> pass.superseded().isEmpty() && pass.mark().isPresent());
    }

    /** Number and title: {@code 80 Acid pickle}. */
    public String label() {
        return label(step);
    }

    static String label(Step step) {
        return step.number() + " " + step.title();
    }
}
