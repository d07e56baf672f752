package brightseam.ui.desk;

import brightseam.kernel.StepId;
import brightseam.people.Person;
import brightseam.people.Role;
import brightseam.report.Phrases;
import brightseam.traveller.Disposition;
import brightseam.traveller.Guide;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.Optional;

/** Decides one open nonconformance: what becomes of the pieces, why, and the PIN of whoever says so. */
public final class DispositionForm extends Div {

    private final RadioButtonGroup<Disposition> disposition = new RadioButtonGroup<>();
    private final Select<StepId> returnTo = new Select<>();
    private final TextArea reason = new TextArea("Reason (goes into the record)");
    private final PasswordField pin = Forms.pin("Your PIN");

    /** The form for {@code open} on {@code card}; only a note where the person here may not decide anything. */
    public DispositionForm(Decisions decisions, InspectorActions actions, Card card, Nonconformance open) {
        List<Role> roles = decisions.desk().person().map(Person::roles).orElse(List.of());
        List<Disposition> mine = Disposition.openTo(roles);
        if (mine.isEmpty()) {
            add(Forms.note("A lead or an inspector decides what becomes of it."));
            return;
        }
        List<StepId> returns = Guide.returns(card.traveller(), card.procedure(), open);
        disposition.setLabel("What becomes of " + Phrases.pieces(open.pieces()));
        disposition.setItems(mine);
        disposition.setItemLabelGenerator(Phrases::disposition);
        disposition.setItemEnabledProvider(choice -> choice != Disposition.REWORK || !returns.isEmpty());
        returnTo.setLabel("Rework goes back to step");
        returnTo.setItems(returns);
        returnTo.setItemLabelGenerator(step ->
                card.procedure().step(step).number() + " " + card.procedure().step(step).title());
        returnTo.setVisible(false);
        disposition.addValueChangeListener(chosen -> returnTo.setVisible(chosen.getValue() == Disposition.REWORK));
        reason.setMaxLength(Decisions.WORDS_MAX);
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
                signer -> actions.decide(decisions.actor(), decisions.id(), open.number(), chosen, back,
                        reason.getValue(), signer));
    }
}
