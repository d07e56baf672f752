package brightseam.ui.board;

import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;

/** Sets some pieces of a lot apart as a traveller of their own. */
final class SetApartForm extends Div {

    private final CheckboxGroup<Integer> pieces = new CheckboxGroup<>("Pieces to set apart");
    private final TextArea reason = new TextArea("Reason for setting them apart (goes into the record)");
    private final PasswordField pin = Forms.pin("Your PIN to set apart");

    SetApartForm(Desk desk, Told told, InspectorActions actions, Card card, Runnable done) {
        addClassName("desk-form");
        if (card.traveller().pieces().size() < 2) {
            add(Forms.note("The lot has one piece; nothing can be set apart from it."));
            return;
        }
        pieces.setItems(card.traveller().pieces());
        reason.setMaxLength(Decisions.WORDS_MAX);
        add(pieces, reason, Forms.row(pin, Forms.button("Set apart and sign", () -> {
            told.signer(pin).flatMap(by -> told.outcome(() -> actions.setApart(
                    desk.actor().seeing(List.of(card)), card.id(),
                    pieces.getValue().stream().sorted().toList(), reason.getValue(), by))).ifPresent(child -> {
                        told.done("Set apart", "The pieces are traveller " + child.id() + " now: print its label.");
                        done.run();
                    });
        })));
    }
}
