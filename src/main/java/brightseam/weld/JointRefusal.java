package brightseam.weld;

import brightseam.kernel.JointId;
import brightseam.kernel.Refusal;

/** The rules that stand against a {@link JointCommand}. */
public sealed interface JointRefusal extends Refusal permits ArcRefusal, JudgeRefusal {

    /** Which joint. */
    JointId joint();
}
