package brightseam.ui.admin;

import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.textfield.TextField;
import java.util.function.Consumer;

/** An action that asks for a reason first: the first press shows the field, the second does it. */
final class ReasonForm extends Div {

    ReasonForm(String words, String about, Consumer<String> act) {
        addClassName("cell-actions");
        TextField reason = new TextField("Reason");
        reason.setMaxLength(200);
        reason.setVisible(false);
        NativeButton confirm = Forms.act(words, () -> act.accept(reason.getValue()));
        confirm.getElement().setAttribute("aria-label", words + " " + about + ", with this reason");
        confirm.setVisible(false);
        NativeButton open = Forms.button(words + " …", () -> {
            reason.setVisible(true);
            confirm.setVisible(true);
            reason.focus();
        });
        open.getElement().setAttribute("aria-label", words + " " + about);
        open.addClickListener(pressed -> open.setVisible(false));
        add(open, reason, confirm);
    }
}
