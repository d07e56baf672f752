package brightseam.ui.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasComponents;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.Collection;

/** The one card: a verdict across its top, what it is about, the thing to do, and at its foot the actions. */
@Tag("article")
@StyleSheet("context://frontend/shop.css")
public final class WorkCard extends Component implements HasComponents {

    private final VerdictBand verdict = new VerdictBand();
    private final Span over = new Span();
    private final H1 title = new H1();
    private final Div body = new Div();
    private final Div actions = new Div();

    /** Makes the card headed {@code title}, with a short line above it such as {@code Step 70 · pickle tank}. */
    public WorkCard(String line, String title) {
        getElement().getClassList().add("work-card");
        over.addClassName("step-number");
        Div head = new Div(this.title, over);
        head.addClassName("card-head");
        body.addClassName("card-body");
        actions.addClassName("card-actions");
        getElement().appendChild(verdict.getElement(), head.getElement(), body.getElement(), actions.getElement());
        head(line, title);
    }

    /** Changes the head. */
    public void head(String line, String title) {
        over.setText(line);
        this.title.setText(title);
    }

    /** Adds an instruction in large type. */
    public void instruction(String words) {
        Paragraph instruction = new Paragraph(words);
        instruction.addClassName("instruction");
        add(instruction);
    }

    /** Replaces the actions at the foot of the card. */
    public void actions(Component... replacing) {
        actions.removeAll();
        actions.add(replacing);
    }

    /** The band across the card. */
    public VerdictBand verdict() {
        return verdict;
    }

    @Override
    public void add(Collection<Component> components) {
        body.add(components);
    }

    @Override
    public void removeAll() {
        body.removeAll();
    }
}
