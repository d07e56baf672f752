package brightseam.ui.parts;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;

/** A component whose look is in {@code shop.css} and whose work in the page is done by one module of our own. */
@StyleSheet("context://frontend/shop.css")
abstract class Part extends Component {

    private final String module;

    /** @param module the file in {@code frontend/} that defines this part's element */
    Part(String module) {
        this.module = module;
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        attached.getUI().getPage().addJsModule("context://frontend/" + module);
    }

    /** Sets {@code attribute}, or removes it where {@code value} is null. */
    final void say(String attribute, Object value) {
        if (value == null) {
            getElement().removeAttribute(attribute);
        } else {
            getElement().setAttribute(attribute, String.valueOf(value));
        }
    }
}
