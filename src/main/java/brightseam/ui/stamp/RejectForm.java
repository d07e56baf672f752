package brightseam.ui.stamp;

import brightseam.procedure.Step;
import brightseam.traveller.shell.InspectorActions;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;

/** Rejects pieces at an inspection point: quarantine. */
final class RejectForm extends Div {

    RejectForm(Decisions decisions, InspectorActions actions, Step step, List<Integer> pieces) {
        addClassNames("stamp-form", "stamp-reject");
        CheckboxGroup<Integer> chosen = new CheckboxGroup<>("Which pieces");
        chosen.setItems(pieces);
        chosen.setItemLabelGenerator(piece -> "piece " + piece);
        if (pieces.size() == 1) {
            chosen.select(pieces);
        }
        TextArea reason = new TextArea("What was found (goes into the record)");
        reason.setMaxLength(Decisions.WORDS_MAX);
        PasswordField pin = Forms.pin("Your PIN");
        add(new H3("Reject"), new Paragraph("The lot goes into quarantine until a disposition is signed."), chosen,
                reason, Forms.row(pin, Forms.act("Reject", () -> {
                    if (chosen.isEmpty()) {
                        decisions.told().refused("Which pieces?", "No piece is chosen.", "Choose at least one.");
                        return;
                    }
                    decisions.signed(pin, "Rejected", decisions.id() + " is in quarantine. Decide below what becomes"
                            + " of it.", signer -> actions.reject(decisions.actor(), decisions.id(), step.id(),
                            signer, chosen.getValue().stream().sorted().toList(), reason.getValue()));
                })));
    }
}
