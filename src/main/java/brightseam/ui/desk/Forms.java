package brightseam.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;

/** The pieces of forms, all with visible labels. */
public final class Forms {

    private Forms() {}

    /** A part of a page under a heading of its own. */
    public static Section panel(String heading, Component... content) {
        Section panel = new Section(new H2(heading));
        panel.addClassName("desk-panel");
        panel.add(content);
        return panel;
    }

    /** Fields and buttons side by side, broken into lines as the page is wide. */
    public static Div row(Component... fields) {
        Div row = new Div(fields);
        row.addClassName("desk-row");
        return row;
    }

    /** A sentence that explains. */
    public static Paragraph note(String words) {
        Paragraph note = new Paragraph(words);
        note.addClassName("desk-note");
        return note;
    }

    /** A field for one line of text; {@code example} is shown under it. */
    public static TextField text(String label, String example) {
        TextField field = new TextField(label);
        field.setHelperText(example);
        return field;
    }

    /** A field for a PIN, shown as dots and never remembered by the browser. */
    public static PasswordField pin(String label) {
        PasswordField field = new PasswordField(label);
        field.setRevealButtonVisible(false);
        field.getElement().setAttribute("autocomplete", "off");
        field.setWidth("12em");
        return field;
    }

    /** The button of a form that does what the form is for. */
    public static NativeButton act(String words, Runnable act) {
        NativeButton button = button(words, act);
        button.addClassName("strong");
        return button;
    }

    /** Any other button. */
    public static NativeButton button(String words, Runnable act) {
        NativeButton button = new NativeButton(words, pressed -> act.run());
        button.addClassName("desk-button");
        button.getElement().setAttribute("type", "button");
        return button;
    }
}
