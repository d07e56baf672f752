package brightseam.ui.stamp;

import brightseam.traveller.shell.TravellerActions;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;

/** Corrects an entry that was written down wrongly; the old value stays visible. */
final class CorrectForm extends Div {

    CorrectForm(Decisions decisions, TravellerActions actions, List<Ask.Entry> entries) {
        addClassName("stamp-form");
        Select<Ask.Entry> entry = new Select<>();
        entry.setLabel("Which entry");
        entry.setItems(entries);
        entry.setItemLabelGenerator(one -> one.step().number() + " " + one.step().title() + ", " + one.label() + ": "
                + one.current().toPlainString());
        TextField value = Forms.text("What it should say", "A number; 1 for in order, 0 for not");
        TextField reason = Forms.text("Why it was wrong", "Goes into the record; the old value stays visible");
        reason.setMaxLength(Decisions.WORDS_MAX);
        PasswordField pin = Forms.pin("Your PIN");
        add(Forms.note("The old value stays in the record, struck through. Whoever read it, a lead or an inspector"
                + " may correct it."), entry, Forms.row(value, reason),
                Forms.row(pin, Forms.act("Correct and sign", () -> {
                    if (entry.isEmpty()) {
                        decisions.told().refused("Choose first", "No entry is chosen.", "Choose which one was wrong.");
                        return;
                    }
                    Ask.Entry wrong = entry.getValue();
                    decisions.signed(pin, "Corrected", wrong.label() + " now says " + value.getValue().strip() + ".",
                            signer -> actions.correctReading(decisions.actor(), decisions.id(),
                                    wrong.step().id(), wrong.reading(), Ask.number(value.getValue()),
                                    reason.getValue(), signer));
                })));
    }
}
