package brightseam.ui.meters;

import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;

/** What of a meter's readings is drawn. */
final class SightFields extends Div {

    private final Select<MeterSight.Span> span = new Select<>();
    private final Checkbox logarithmic = new Checkbox("By powers of ten");
    private final TextField line = Forms.text("Line at", "such as the limit; may be empty");

    /** Fields that call {@code changed} when somebody changes them. */
    SightFields(Runnable changed) {
        span.setLabel("How far back");
        span.setItems(MeterSight.Span.values());
        span.setItemLabelGenerator(MeterSight.Span::words);
        span.setValue(MeterSight.Span.TEN_MINUTES);
        add(Forms.row(span, line, logarithmic));
        span.addValueChangeListener(chosen -> changed.run());
        logarithmic.addValueChangeListener(chosen -> changed.run());
        line.addValueChangeListener(keyed -> changed.run());
    }

    /** What is chosen. Refuses a line that is no number. */
    MeterSight sight() {
        return new MeterSight(span.getValue(), logarithmic.getValue(),
                Numbers.optional("line at", line.getValue()).map(Number::doubleValue));
    }

    /** Whether so little is shown that it can be drawn at every look. */
    boolean isShort() {
        return span.getValue() == MeterSight.Span.TEN_MINUTES;
    }
}
