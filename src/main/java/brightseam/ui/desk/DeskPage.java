package brightseam.ui.desk;

import brightseam.people.Role;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.VerdictBand;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import java.util.Optional;
import java.util.function.Function;

/** A page of a lead, an inspector or an administrator: frame, ways to the other pages, heading, what was told. */
@StyleSheet("context://frontend/desk.css")
public abstract class DeskPage extends Composite<ScreenFrame> {

    private final Desk desk;
    private final ScreenFrame frame;
    private final H1 heading;
    private final Paragraph under = new Paragraph();
    private final Div body = new Div();
    private final Told told;

    /** Makes an empty page headed {@code title}. */
    protected DeskPage(Desk desk, String title) {
        this.desk = desk;
        this.heading = new H1(title);
        this.frame = desk.frame();
        VerdictBand band = new VerdictBand();
        this.told = new Told(desk, band);
        Div head = new Div(heading, under);
        head.addClassName("desk-head");
        body.addClassName("desk-body");
        Div page = new Div(ways(), band, head, body);
        page.addClassName("desk");
        under.setVisible(false);
        frame.add(page);
    }

    @Override
    protected final ScreenFrame initContent() {
        return frame;
    }

    /** Who sits here. */
    protected final Desk desk() {
        return desk;
    }

    /** Where the outcome of an action is told. */
    protected final Told told() {
        return told;
    }

    /** Changes heading and the line under it. */
    protected final void head(String title, String line) {
        heading.setText(title);
        under.setText(line);
        under.setVisible(!line.isEmpty());
    }

    /** Replaces what the page shows. */
    protected final void show(Component... content) {
        body.removeAll();
        body.add(content);
    }

    /** The label that {@code parameter} of the page's address gives; empty where it is none. */
    protected static <T> Optional<T> label(BeforeEnterEvent entering, String parameter, Function<String, T> make) {
        try {
            return entering.getRouteParameters().get(parameter).map(make);
        } catch (IllegalArgumentException noLabel) {
            return Optional.empty();
        }
    }

    private Nav ways() {
        Nav ways = new Nav();
        ways.addClassName("desk-ways");
        ways.getElement().setAttribute("aria-label", "Pages");
        if (desk.holds(Role.LEAD, Role.INSPECTOR, Role.ADMINISTRATOR)) {
            ways.add(Links.to("board", "Board"));
        }
        if (desk.holds(Role.LEAD, Role.INSPECTOR, Role.PROCESS_CONTROL)) {
            ways.add(Links.to("baths", "Baths"));
        }
        if (desk.holds(Role.LEAD, Role.FABRICATOR, Role.PROCESS_CONTROL)) {
            ways.add(Links.to("argon", "Argon"));
        }
        if (desk.holds(Role.INSPECTOR, Role.PROCESS_CONTROL) && !desk.holds(Role.LEAD, Role.ADMINISTRATOR)) {
            ways.add(Links.to("shop/chamber", "Chambers"));
        }
        if (desk.holds(Role.LEAD, Role.INSPECTOR)) {
            ways.add(Links.to("line", "Line"));
        }
        if (desk.holds(Role.LEAD, Role.INSPECTOR, Role.FABRICATOR)) {
            ways.add(Links.to("chamber", "Chamber"));
            ways.add(Links.to("plan", "Plan"));
        }
        if (desk.holds(Role.LEAD)) {
            ways.add(Links.to("release", "Release"));
        }
        if (desk.holds(Role.INSPECTOR)) {
            ways.add(Links.to("stamp", "Stamp desk"));
            ways.add(Links.to("stamp/joints", "Joints"));
        }
        if (desk.holds(Role.LEAD, Role.INSPECTOR, Role.PROCESS_CONTROL)) {
            ways.add(Links.to("trace", "Trace"));
        }
        if (desk.holds(Role.LEAD, Role.ADMINISTRATOR)) {
            ways.add(Links.to("shop", "Shop registers"));
        }
        if (desk.holds(Role.FABRICATOR)) {
            ways.add(Links.to("bench", "Bench"));
        }
        if (desk.isDemo()) {
            ways.add(Links.to("demo", "Demo"));
        }
        return ways;
    }
}
