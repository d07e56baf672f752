package brightseam.ui.chamber;

import brightseam.ui.parts.LivePlace;
import brightseam.ui.parts.Mark;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;
import java.util.Optional;

/** Draws the head of the screen: phases as a thin strip of words, what is measured, what is wrong with a meter. */
final class StripFace extends Div {

    private final Div stops = new Div();
    private final Div gauges = new Div();
    private final Div troubles = new Div();
    private final LivePlace live;
    private Optional<Strip> shown = Optional.empty();

    StripFace() {
        addClassName("chamber-strip");
        stops.addClassName("strip-line");
        gauges.addClassName("gauges");
        troubles.addClassName("meter-troubles");
        live = new LivePlace(gauges);
        add(stops, live, troubles);
    }

    /** Shows {@code strip}, and tells the page that it is of now. */
    void show(Strip strip) {
        live.beat();
        if (shown.equals(Optional.of(strip))) {
            return;
        }
        Optional<Strip> before = shown;
        shown = Optional.of(strip);
        if (before.map(Strip::stops).filter(strip.stops()::equals).isEmpty()
                || before.filter(old -> old.simulated() == strip.simulated()).isEmpty()) {
            line(strip);
        }
        gauges.removeAll();
        strip.gauges().forEach(gauge -> gauges.add(gauge(gauge, gauge == strip.gauges().getFirst())));
        if (before.map(Strip::troubles).filter(strip.troubles()::equals).isEmpty()) {
            troubles(strip);
        }
    }

    private void line(Strip strip) {
        stops.removeAll();
        Span session = new Span(strip.session());
        session.addClassName("strip-session");
        Span about = new Span(strip.about());
        about.addClassName("strip-about");
        OrderedList list = new OrderedList();
        list.addClassName("phases");
        list.getElement().setAttribute("aria-label", "Phases of the session");
        strip.stops().forEach(stop -> list.add(stop(stop)));
        stops.add(session, about, list);
        if (strip.simulated()) {
            Span simulated = new Span("SIMULATED");
            simulated.addClassName("simulated-mark");
            stops.add(simulated);
        }
    }

    private static ListItem stop(Strip.Stop stop) {
        ListItem item = new ListItem(new Mark(switch (stop.standing()) {
            case DONE -> Mark.Kind.SIGNED;
            case NOW -> Mark.Kind.NOW;
            case TO_COME -> Mark.Kind.TO_COME;
            case TROUBLE -> Mark.Kind.REFUSED;
        }), new Span(stop.word()));
        item.getElement().setAttribute("data-standing", name(stop.standing()));
        if (stop.standing() == Strip.Standing.NOW || stop.standing() == Strip.Standing.TROUBLE) {
            item.getElement().setAttribute("aria-current", "step");
        }
        return item;
    }

    private static Component gauge(Gauge gauge, boolean first) {
        Span name = new Span(gauge.name());
        name.addClassName("gauge-name");
        Span value = new Span(gauge.quantity());
        value.addClassName("gauge-value");
        Span word = new Span(gauge.word());
        word.addClassName("gauge-word");
        Span limit = new Span(gauge.limit());
        limit.addClassName("gauge-limit");
        Div drawn = new Div(name, value);
        if (!gauge.word().isEmpty()) {
            Div state = new Div();
            state.addClassName("gauge-state");
            mark(gauge.state()).ifPresent(state::add);
            state.add(word);
            drawn.add(state);
        }
        drawn.add(limit);
        drawn.addClassName("gauge");
        drawn.getElement().getClassList().set("first", first);
        drawn.getElement().setAttribute("data-state", name(gauge.state()));
        return drawn;
    }

    /** The shape that goes with a state. */
    static Optional<Mark> mark(Gauge.State state) {
        return switch (state) {
            case IN_ORDER -> Optional.of(new Mark(Mark.Kind.SIGNED));
            case ABOVE -> Optional.of(new Mark(Mark.Kind.REFUSED));
            case NOT_YET -> Optional.of(new Mark(Mark.Kind.TO_COME));
            case UNKNOWN -> Optional.of(new Mark(Mark.Kind.STOPPED));
            case PLAIN -> Optional.empty();
        };
    }

    private void troubles(Strip strip) {
        troubles.removeAll();
        strip.troubles().forEach(words -> {
            Div trouble = new Div(new Mark(Mark.Kind.CAUTION), new Span(words));
            trouble.addClassName("meter-trouble");
            troubles.add(trouble);
        });
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
