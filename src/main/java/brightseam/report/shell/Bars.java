package brightseam.report.shell;

import brightseam.kernel.Limits;
import brightseam.report.HoldTaken;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/** Small drawings for paper: a hold as a bar from zero against its limits, a reading as a point between its limits. */
final class Bars {

    private static final double ROOM = 1.12;

    private final Sheet sheet;

    Bars(Sheet sheet) {
        this.sheet = sheet;
    }

    void hold(Element parent, HoldTaken hold) {
        Duration lasted = hold.lasted().orElse(Duration.ZERO);
        Duration longest = Stream.of(lasted, hold.limits().minimum(), hold.limits().maximum().orElse(Duration.ZERO))
                .max(Duration::compareTo).orElseThrow();
        double whole = Math.max(1, longest.toMillis()) * ROOM;
        Element bar = sheet.add(parent, "div", "bar");
        Element fill = sheet.add(bar, "div",
                "bar-fill bar-" + hold.verdict().name().toLowerCase(Locale.ROOT));
        fill.setAttribute("style", "width: " + percent(lasted.toMillis() / whole) + "%;");
        if (!hold.limits().minimum().isZero()) {
            limit(bar, 100 * hold.limits().minimum().toMillis() / whole);
        }
        hold.limits().maximum().ifPresent(most -> limit(bar, 100 * most.toMillis() / whole));
    }

    /** Limits lie a fifth from either end where both are set; a missing one leaves that side open. */
    void reading(Element parent, Limits limits, BigDecimal value) {
        if (limits.minimum().isEmpty() && limits.maximum().isEmpty()) {
            return;
        }
        double low = limits.minimum().or(limits::maximum).orElseThrow().doubleValue();
        double high = limits.maximum().orElse(BigDecimal.valueOf(low)).doubleValue();
        if (limits.minimum().isEmpty()) {
            low = Math.min(0, value.doubleValue());
        }
        if (limits.maximum().isEmpty()) {
            high = Math.max(2 * low, value.doubleValue());
        }
        double span = Math.max(high - low, 1e-9);
        Element scale = sheet.add(parent, "div", "scale");
        Optional.of(low).filter(at -> limits.minimum().isPresent()).ifPresent(at -> limit(scale, 20));
        Optional.of(high).filter(at -> limits.maximum().isPresent()).ifPresent(at -> limit(scale, 80));
        Element point = sheet.add(scale, "div", limits.admits(value) ? "point" : "point point-out");
        point.setAttribute("style", Sheet.left(Math.clamp(20 + 60 * (value.doubleValue() - low) / span, 2, 98)));
    }

    private void limit(Element bar, double percent) {
        sheet.add(bar, "div", "limit").setAttribute("style", Sheet.left(percent));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f", Math.clamp(share * 100, 0, 100));
    }
}
