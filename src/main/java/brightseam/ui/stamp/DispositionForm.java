package brightseam.ui.stamp;

import brightseam.kernel.StepId;
import brightseam.people.Role;
import brightseam.report.Phrases;
import brightseam.traveller.Disposition;
import brightseam.traveller.Guide;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Decides what becomes of one open nonconformance. */
final class DispositionForm extends Div {

    private static final int REASON_MAX = 400;

    private final RadioButtonGroup<Disposition> disposition = new RadioButtonGroup<>("What becomes of it");
    private final Select<StepId> returnTo = new Select<>();
    private final TextArea reason = new TextArea("Reason (goes into the record)");
    private final PasswordField pin = Decisions.pin();

    DispositionForm(Decisions decisions, InspectorActions actions, Card card, Nonconformance open,
            Collection<Role> roles) {
        addClassNames("stamp-form", "stamp-disposition");
        List<StepId> returns = Guide.returns(card.traveller(), card.procedure(), open);
        disposition.setItems(Ask.choices(roles));
        disposition.setItemLabelGenerator(Phrases::disposition);
        disposition.setItemEnabledProvider(choice -> choice != Disposition.REWORK || !returns.isEmpty());
        returnTo.setLabel("Rework goes back to step");
        returnTo.setItems(returns);
        returnTo.setItemLabelGenerator(step ->
                card.procedure().step(step).number() + " " + card.procedure().step(step).title());
        returnTo.setVisible(false);
        disposition.addValueChangeListener(chosen -> returnTo.setVisible(chosen.getValue() == Disposition.REWORK));
        reason.setMaxLength(REASON_MAX);
        add(new H3("Nonconformance " + open.number() + ": " + Phrases.cause(open.cause()) + ", "
                + Phrases.pieces(open.pieces())));
        if (returns.isEmpty()) {
            add(Forms.note("The procedure names no step that rework could return to from here."));
        }
        add(disposition, returnTo, reason, Forms.row(pin, Forms.act("Decide and sign", () ->
                decide(decisions, actions, open))));
    }

    private void decide(Decisions decisions, InspectorActions actions, Nonconformance open) {
        if (disposition.isEmpty()) {
            decisions.told().refused("Choose first", "Nothing is chosen for nonconformance " + open.number() + ".",
                    "Choose what becomes of the pieces.");
            return;
        }
        Disposition chosen = disposition.getValue();
        Optional<StepId> back = chosen == Disposition.REWORK ? returnTo.getOptionalValue() : Optional.empty();
        decisions.signed(pin, "Decided", "Nonconformance " + open.number() + ": " + Phrases.disposition(chosen) + ".",
                signer -> actions.decide(decisions.desk().actor(), decisions.id(), open.number(), chosen, back,
                        reason.getValue(), signer));
    }
}
