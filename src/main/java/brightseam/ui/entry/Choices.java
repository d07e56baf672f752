package brightseam.ui.entry;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.util.List;

/** Big choices below each other. */
final class Choices {

    private Choices() {}

    static Div of(List<Component> choices) {
        Div list = new Div();
        list.addClassName("choices");
        list.add(choices);
        return list;
    }
}
