package brightseam.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Focusable;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** An action that one touch does not do: the first press asks, the second does it. */
public final class TwoPresses extends Div {

    private TwoPresses(String words, String about, String aloud, List<Component> asked, Runnable act) {
        addClassName("cell-actions");
        NativeButton confirm = Forms.act(words, act);
        confirm.getElement().setAttribute("aria-label", words + " " + about + aloud);
        NativeButton leave = Forms.button("Leave it", () -> { });
        NativeButton open = Forms.button(words + " …", () -> { });
        open.getElement().setAttribute("aria-label", words + " " + about);
        List<Component> second = new ArrayList<>(asked);
        second.addAll(List.of(confirm, leave));
        second.forEach(part -> part.setVisible(false));
        open.addClickListener(pressed -> {
            open.setVisible(false);
            second.forEach(part -> part.setVisible(true));
            ((Focusable<?>) second.getFirst()).focus();
        });
        leave.addClickListener(pressed -> {
            second.forEach(part -> part.setVisible(false));
            open.setVisible(true);
            open.focus();
        });
        add(open);
        add(second);
    }

    /** Asks for a reason, which {@code act} is given. */
    public static TwoPresses withReason(String words, String about, Consumer<String> act) {
        TextField reason = new TextField("Reason");
        reason.setMaxLength(200);
        return new TwoPresses(words, about, ", with this reason", List.of(reason),
                () -> act.accept(reason.getValue()));
    }

    /** Asks whether it is meant: what {@code act} does cannot be undone. */
    public static TwoPresses forGood(String words, String about, Runnable act) {
        return new TwoPresses(words, about, " for good", List.of(), act);
    }
}
