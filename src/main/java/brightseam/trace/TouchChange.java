package brightseam.trace;

import brightseam.kernel.StepId;
import java.time.Instant;
import java.util.List;

/** What one event changes in the contacts of its traveller. */
public sealed interface TouchChange {

    /** Contact began. */
    record Began(Touch touch) implements TouchChange {}

    /** Somebody handled the pieces: begins contact, or makes it last until then where it began at the same step. */
    record Handled(Touch touch) implements TouchChange {}

    /** Contact at a joint lasted until then at least: of what began there, or of what nobody saw begin. */
    record WasAtJoint(Touch touch) implements TouchChange {}

    /** The pieces left the bin that they were in. */
    record LeftBin(Instant at) implements TouchChange {}

    /** The pieces were lifted out: contact with station, bath and water at that step ends. */
    record LiftedOut(StepId step, int pass, Instant at) implements TouchChange {}

    /** The step is over: whatever still touched the pieces at it no longer does. */
    record StepOver(StepId step, int pass, Instant at) implements TouchChange {}

    /** Pieces went on as another traveller, and what touched them with them. */
    record Parted(List<Integer> pieces) implements TouchChange {}
}
