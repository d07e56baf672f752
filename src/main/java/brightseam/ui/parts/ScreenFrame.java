package brightseam.ui.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasComponents;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Optional;

/**
 * The frame round every screen: shop, demo mark, link, who is signed in, clock; below it the screen's content; at the
 * foot the band that tells of a lost server. Starts the page's heartbeat against {@code /alive}.
 */
@Tag("div")
public final class ScreenFrame extends Part implements HasComponents {

    private final Main content = new Main();
    private final Span signedIn = new Span();
    private final Element clock = new Element("shop-clock");

    /**
     * Makes an empty frame with nobody signed in.
     *
     * @param shopName what the shop calls itself
     * @param demo the mark, where this is a demo shop
     * @param zone where the shop is, for the clock
     */
    public ScreenFrame(String shopName, Optional<DemoMark> demo, ZoneId zone) {
        super("screen-frame.js");
        getElement().getClassList().add("shop-frame");
        Header header = new Header();
        Paragraph name = new Paragraph(shopName);
        name.addClassName("shop-name");
        header.add(name);
        demo.ifPresent(mark -> header.add(demoMark(mark)));
        header.getElement().appendChild(new Element("shop-link-word"));
        signedIn.addClassName("signed-in");
        header.add(signedIn);
        clock.setAttribute("speed", String.valueOf(demo.map(DemoMark::speed).orElse(1.0)));
        clock.setAttribute("zone", zone.equals(ZoneOffset.UTC) ? "UTC" : zone.getId());
        clock.getClassList().add("clock-place");
        header.getElement().appendChild(clock);
        Element link = new Element("shop-link");
        link.setAttribute("alive-url", "alive");
        getElement().appendChild(header.getElement(), content.getElement(), link);
        signedIn(Optional.empty());
    }

    private static Span demoMark(DemoMark mark) {
        Span shown = new Span(mark.words());
        shown.addClassName("demo-mark");
        return shown;
    }

    /** Sets the clock; the page carries it on by itself. */
    public void wallTime(Instant wall) {
        clock.setAttribute("wall-ms", String.valueOf(wall.toEpochMilli()));
    }

    /** Says who is signed in, such as {@code Ada Quill · fabricator}, or that nobody is. */
    public void signedIn(Optional<String> person) {
        signedIn.setText(person.map(name -> "Signed in: " + name).orElse("Nobody signed in"));
    }

    /** Shows {@code way}, such as the way to hand the tablet over, in the head instead of who is signed in. */
    public void way(Component way) {
        signedIn.removeFromParent();
        way.getElement().getClassList().add("way");
        getElement().getChild(0).insertChild(getElement().getChild(0).getChildCount() - 1, way.getElement());
    }

    @Override
    public void add(Collection<Component> components) {
        content.add(components);
    }

    @Override
    public void removeAll() {
        content.removeAll();
    }
}
