package brightseam.ui.chamber;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;
import java.util.Optional;

/** One number that reads from across the shop, with its limit and how it stands to it. */
final class BigGauge extends Div {

    private final Span name = new Span();
    private final Span digits = new Span();
    private final Span unit = new Span();
    private final Div state = new Div();
    private Optional<Gauge> shown = Optional.empty();

    BigGauge() {
        addClassName("big-gauge");
        name.addClassName("big-name");
        digits.addClassName("big-digits");
        unit.addClassName("big-unit");
        state.addClassName("big-state");
        Div number = new Div(digits, unit);
        number.addClassName("big-number");
        add(name, number, state);
    }

    void show(Gauge gauge) {
        if (shown.equals(Optional.of(gauge))) {
            return;
        }
        shown = Optional.of(gauge);
        getElement().setAttribute("data-state", gauge.state().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        name.setText(gauge.name());
        digits.setText(gauge.value());
        digits.getElement().setAttribute("data-length", String.valueOf(gauge.value().length()));
        unit.setText(gauge.unit());
        state.removeAll();
        StripFace.mark(gauge.state()).ifPresent(state::add);
        state.add(new Span(gauge.word() + (gauge.limit().isEmpty() ? "" : " · " + gauge.limit())));
    }
}
