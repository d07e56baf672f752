package brightseam.procedure;

import brightseam.kernel.StepId;
import java.time.Duration;

/**
 * How long parts stay clean after the step that opens the window.
 *
 * @param openedBy the step whose signature opens it
 * @param closedBy the step whose signature ends the need for it, such as pass-in
 * @param limits how long, in each handling state
 * @param passInMargin what has to be left when parts are passed in
 * @param renewReturnsTo the step that a run-out window sends the pieces back to
 */
public record CleanWindow(
        StepId openedBy, StepId closedBy, WindowLimits limits, Duration passInMargin, StepId renewReturnsTo) {}
