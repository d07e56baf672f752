package brightseam.ui.chamber;

import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;

/** Lines whose words change with what is measured. */
final class Lines extends UnorderedList {

    private List<String> shown = List.of();

    Lines() {
        addClassName("lines");
        setVisible(false);
    }

    void show(List<String> texts) {
        if (!shown.equals(texts)) {
            shown = List.copyOf(texts);
            removeAll();
            texts.forEach(text -> add(new ListItem(text)));
            setVisible(!texts.isEmpty());
        }
    }
}
