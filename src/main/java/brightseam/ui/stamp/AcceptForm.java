package brightseam.ui.stamp;

import brightseam.procedure.Step;
import brightseam.traveller.shell.InspectorActions;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Optional;

/** Accepts and stamps an inspection point. */
final class AcceptForm extends Div {

    AcceptForm(Decisions decisions, InspectorActions actions, Step step, Optional<String> stamp, String covers) {
        addClassNames("stamp-form", "stamp-accept");
        TextField remark = Forms.text("Remark (may stay empty)", "Goes into the record beside the stamp");
        remark.setMaxLength(Decisions.WORDS_MAX);
        PasswordField pin = Forms.pin("Your PIN");
        Paragraph number = new Paragraph(stamp.map(held -> "Stamp " + held)
                .orElse("No stamp has been issued to you: ask an administrator."));
        number.addClassName("stamp-number");
        add(new H3("Accept"), new Paragraph("I inspected step " + step.number() + " " + step.title() + ", " + covers
                + ", and accept."), number, Forms.note("Only you can use this number; it is stored with your name, the"
                + " time and what it covers."), remark, Forms.row(pin, Forms.act("Accept and stamp", () ->
                decisions.signed(pin, "Stamped", "Step " + step.number() + " " + step.title() + " of " + decisions.id()
                        + " is stamped.", signer -> actions.stamp(decisions.actor(), decisions.id(), step.id(),
                        signer, remark.getValue())))));
    }
}
