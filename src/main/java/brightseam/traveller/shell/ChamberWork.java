package brightseam.traveller.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Step;
import java.util.List;

/** What the weld map knows of a traveller's joints; whoever keeps the joints implements it. */
public interface ChamberWork {

    /**
     * What stands against passing {@code step} now: at welding the joints that are not welded, at the inspection behind
     * it those that are not judged and accepted. Empty for every other step.
     */
    List<Refusal> objections(TravellerId traveller, Step step, Moment now);
}
