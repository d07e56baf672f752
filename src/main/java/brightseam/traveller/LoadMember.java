package brightseam.traveller;

import brightseam.kernel.BinId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import java.util.Optional;

/**
 * One traveller of a load, or one that lies beside it, with what the rules of loads ask.
 *
 * @param traveller its state
 * @param procedure the revision that it follows
 * @param grade the grade of its heat, as the shop's register has it; empty text where the register lacks the heat
 */
public record LoadMember(Traveller traveller, Procedure procedure, String grade) {

    TravellerId id() {
        return traveller.id();
    }

    Optional<Step> find(StepId step) {
        return procedure.find(step);
    }

    /** The process basket that it lies in, where it lies in one. */
    Optional<BinId> basket() {
        return traveller.placement().filter(where -> where.binClass() == BinClass.PROCESS_BASKET)
                .map(Placement::bin);
    }

    /** The step that it stands at: the one that the guide points at, else the first unsigned one, else the last. */
    Step stands() {
        return Guide.next(traveller, procedure).about().orElseGet(() ->
                procedure.step(traveller.currentStep().orElse(procedure.route().getLast())));
    }

    /** Whether a gap runs to {@code step}, which makes the pieces safe, so that nothing may hold them up. */
    boolean cannotWait(StepId step) {
        return new Course(traveller, procedure).makesSafe(step);
    }

    boolean isHolding() {
        return traveller.runs().values().stream().anyMatch(StepRun::isHolding);
    }
}
