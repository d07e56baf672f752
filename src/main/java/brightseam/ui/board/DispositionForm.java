package brightseam.ui.board;

import brightseam.kernel.StepId;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.traveller.Disposition;
import brightseam.traveller.Guide;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import brightseam.words.Wording;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Decides one open nonconformance: what becomes of the pieces, why, and the PIN of whoever says so. */
final class DispositionForm extends Div {

    private final Select<Disposition> disposition = new Select<>();
    private final Select<StepId> returnTo = new Select<>();
    private final TextArea reason = new TextArea("Reason (goes into the record)");
    private final PasswordField pin = Forms.pin("Your PIN");

    DispositionForm(Desk desk, Told told, InspectorActions actions, Card card, Nonconformance open, Runnable done) {
        addClassName("desk-form");
        List<Disposition> mine = Arrays.stream(Disposition.values())
                .filter(may -> desk.holds(may.roles().toArray(Role[]::new))).toList();
        if (mine.isEmpty()) {
            add(Forms.note("A lead or an inspector decides what becomes of it."));
            return;
        }
        disposition.setLabel("What becomes of " + pieces(open));
        disposition.setItems(mine);
        disposition.setItemLabelGenerator(may -> Wording.words(may.name()));
        returnTo.setLabel("Back to step");
        returnTo.setItems(Guide.returns(card.traveller(), card.procedure(), open));
        returnTo.setItemLabelGenerator(step ->
                card.procedure().step(step).number() + " " + card.procedure().step(step).title());
        returnTo.setVisible(false);
        disposition.addValueChangeListener(chosen -> returnTo.setVisible(chosen.getValue() == Disposition.REWORK));
        reason.setMaxLength(400);
        add(Forms.row(disposition, returnTo), reason, Forms.row(pin, Forms.act("Decide and sign", () ->
                decide(told, card, signer -> told.outcome(() -> actions.decide(desk.actor(), card.id(), open.number(),
                        disposition.getValue(), chosenReturn(), reason.getValue(), signer)).isPresent(), done))));
    }

    /** {@code piece 3} or {@code pieces 1, 2, 3}. */
    static String pieces(Nonconformance open) {
        return (open.pieces().size() == 1 ? "piece " : "pieces ")
                + String.join(", ", open.pieces().stream().map(String::valueOf).toList());
    }

    private Optional<StepId> chosenReturn() {
        return disposition.getValue() == Disposition.REWORK ? returnTo.getOptionalValue() : Optional.empty();
    }

    private void decide(Told told, Card card, java.util.function.Predicate<Signer> act, Runnable done) {
        if (disposition.isEmpty()) {
            told.refused("Choose first", "Nothing is chosen for the pieces.", "Choose what becomes of them.");
            return;
        }
        Optional<Signer> signer = told.signer(pin.getValue());
        pin.clear();
        if (signer.filter(act).isPresent()) {
            told.done("Decided", card.id() + ": " + Wording.words(disposition.getValue().name()) + ".");
            done.run();
        }
    }
}
