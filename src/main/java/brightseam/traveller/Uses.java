package brightseam.traveller;

import brightseam.kernel.ContactKind;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What touches the pieces at a step and is scanned before it begins: what the procedure names and, once the gloves
 * touched something else, new gloves at the next step that handles cleaned pieces.
 */
public final class Uses {

    private Uses() {}

    /** What is to be scanned before {@code traveller} begins {@code step}, in the order in which it is asked for. */
    public static List<Use> asked(Traveller traveller, Procedure procedure, Step step) {
        Optional<Use> anew = traveller.glovesSpent() ? gloves(procedure, step).map(Use::changed) : Optional.empty();
        List<Use> asked = new ArrayList<>();
        anew.ifPresent(asked::add);
        step.uses().stream().filter(use -> anew.isEmpty() || use.kind() != ContactKind.GLOVES).forEach(asked::add);
        return asked;
    }

    /** The gloves in which cleaned pieces are held at {@code step}; empty where nobody scans any, as at a stamp. */
    public static Optional<Use> gloves(Procedure procedure, Step step) {
        return procedure.surface(step.id()) == Surface.CLEANED && !step.isInspectionPoint()
                ? step.gloves().map(type -> new Use(ContactKind.GLOVES, type, false)) : Optional.empty();
    }

    /** The step that hands are busy with: the last one that was begun and is not signed. */
    public static Optional<Step> inHand(Traveller traveller, Procedure procedure) {
        return procedure.steps().stream().filter(step -> traveller.run(step.id())
                .filter(run -> !run.isSigned()).isPresent()).reduce((earlier, later) -> later);
    }

    /** The uses of {@code asked} that none of {@code touching} covers. */
    static List<Use> missing(List<Use> asked, List<Contact> touching) {
        return asked.stream().filter(use -> touching.stream()
                .noneMatch(contact -> contact.kind() == use.kind() && contact.type().equals(use.type()))).toList();
    }
}
