package brightseam.ui.parts;

import com.vaadin.flow.component.ClickEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.NativeButton;

/** Something to press with a glove: one main action a card, 128 px or more; others 76 px or more. */
@StyleSheet("context://frontend/shop.css")
public final class Action extends NativeButton {

    private Action(String words, String look, ComponentEventListener<ClickEvent<NativeButton>> pressed) {
        super(words, pressed);
        addClassNames("action");
        if (!look.isEmpty()) {
            addClassName(look);
        }
        getElement().setAttribute("type", "button");
    }

    /** The card's one next action. */
    public static Action main(String words, ComponentEventListener<ClickEvent<NativeButton>> pressed) {
        return new Action(words, "main", pressed);
    }

    /** Any other action. */
    public static Action other(String words, ComponentEventListener<ClickEvent<NativeButton>> pressed) {
        return new Action(words, "", pressed);
    }
}
