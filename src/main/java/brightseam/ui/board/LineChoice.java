package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kit.KitLine;
import brightseam.material.Heat;
import brightseam.procedure.Procedure;
import brightseam.traveller.shell.ReleaseOrder;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import java.util.List;
import java.util.Optional;

/** One line of a kit that is to be released, with the heat that somebody chooses for it. */
final class LineChoice {

    private final KitLine line;
    private final Optional<Procedure> procedure;
    private final Select<Heat> heat = new Select<>();
    private final List<Heat> fitting;

    LineChoice(KitLine line, Optional<Procedure> procedure, List<Heat> registered) {
        this.line = line;
        this.procedure = procedure;
        this.fitting = procedure.map(found -> KitLines.fitting(found, registered)).orElse(List.of());
        heat.setItems(fitting);
        heat.setItemLabelGenerator(one -> one.id() + ", grade " + one.grade() + " " + one.form() + " "
                + one.dimensions());
        heat.setAriaLabel("Heat for line " + line.lineNumber());
        heat.setPlaceholder("choose a heat");
        heat.setWidth("22em");
        line.heat().flatMap(wanted -> fitting.stream().filter(one -> one.id().equals(wanted)).findFirst())
                .ifPresent(heat::setValue);
    }

    KitLine line() {
        return line;
    }

    /** The procedure with the revision that would be pinned. */
    String procedureWords() {
        return procedure.map(found -> found.ref().label())
                .orElse(line.procedure() + ": no revision is approved");
    }

    Component heatChoice() {
        return fitting.isEmpty() ? new Span(procedure.isEmpty() ? "first have the procedure approved"
                : "no registered heat of grade " + String.join(" or ", procedure.get().grades())) : heat;
    }

    /** The label of the heat chosen so far. */
    String chosen() {
        return heat.getOptionalValue().map(one -> one.id().value()).orElse("");
    }

    /** Why the heat named in the list was not taken; empty where it was, or none was named. */
    String note() {
        return line.heat().filter(wanted -> fitting.stream().noneMatch(one -> one.id().equals(wanted)))
                .map(wanted -> "list says " + wanted + ": not registered, on hold, or of another grade").orElse("");
    }

    Optional<ReleaseOrder> order(KitId kit) {
        return heat.getOptionalValue().map(chosen -> KitLines.order(kit, line, chosen));
    }
}
