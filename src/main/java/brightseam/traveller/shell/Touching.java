package brightseam.traveller.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Procedure;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.Contact;
import brightseam.traveller.Uses;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Gathers what the register of supplies says about what was scanned before it touches pieces. */
@Component
class Touching {

    private final Supplies supplies;

    Touching(Supplies supplies) {
        this.supplies = supplies;
    }

    /** Those of {@code scanned} that are registered, as facts. */
    List<Contact> contacts(Collection<SupplyId> scanned) {
        return scanned.stream().distinct().map(supplies::find).flatMap(Optional::stream).map(found -> found.state())
                .map(supply -> new Contact(supply.kind(), supply.type(), supply.id().value(), supply.lot())).toList();
    }

    /** What stands against any of {@code scanned} touching the pieces at {@code step}. */
    List<Refusal> objections(Collection<SupplyId> scanned, Transactions.Asked card, StepId id, Origin origin) {
        Procedure procedure = card.procedure();
        return procedure.find(id).map(step -> supplies.look(scanned, Uses.asked(card.traveller(), procedure, step),
                procedure.surface(step.id()), origin.at()).objections()).orElse(List.of());
    }

    /** What stands against {@code gloves} being put on in the middle of the step at hand. */
    List<Refusal> objectionsTo(SupplyId gloves, Transactions.Asked card, Origin origin) {
        Procedure procedure = card.procedure();
        return Uses.inHand(card.traveller(), procedure).map(step -> supplies.look(List.of(gloves),
                Uses.gloves(procedure, step).stream().toList(), procedure.surface(step.id()), origin.at())
                .objections()).orElse(List.of());
    }
}
