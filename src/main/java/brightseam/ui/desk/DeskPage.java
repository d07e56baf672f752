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
        way(ways, "board", "Board", Role.LEAD, Role.INSPECTOR, Role.ADMINISTRATOR);
        way(ways, "baths", "Baths", Role.LEAD, Role.INSPECTOR, Role.PROCESS_CONTROL);
        way(ways, "argon", "Argon", Role.LEAD, Role.FABRICATOR, Role.PROCESS_CONTROL);
        if (!desk.holds(Role.LEAD, Role.ADMINISTRATOR)) {
            way(ways, "shop/chamber", "Chambers", Role.INSPECTOR, Role.PROCESS_CONTROL);
        }
        way(ways, "line", "Line", Role.LEAD, Role.INSPECTOR);
        way(ways, "chamber", "Chamber", Role.LEAD, Role.INSPECTOR, Role.FABRICATOR);
        way(ways, "plan", "Plan", Role.LEAD, Role.INSPECTOR, Role.FABRICATOR);
        way(ways, "release", "Release", Role.LEAD);
        way(ways, "stamp", "Stamp desk", Role.INSPECTOR);
        way(ways, "stamp/joints", "Joints", Role.INSPECTOR);
        way(ways, "shop/stamps", "Stamps", Role.INSPECTOR);
        way(ways, "trace", "Trace", Role.LEAD, Role.INSPECTOR, Role.PROCESS_CONTROL);
        way(ways, "shop", "Shop registers", Role.LEAD, Role.ADMINISTRATOR);
        way(ways, "shop/seals", "Seals", Role.INSPECTOR, Role.ADMINISTRATOR);
        way(ways, "bench", "Bench", Role.FABRICATOR);
        if (desk.isDemo()) {
            ways.add(Links.to("demo", "Demo"));
        }
        return ways;
    }

    /** A link for whoever holds one of {@code roles}. */
    private void way(Nav ways, String path, String words, Role... roles) {
        if (desk.holds(roles)) {
            ways.add(Links.to(path, words));
        }
    }
}
