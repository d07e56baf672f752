package brightseam.ui.meters;

import brightseam.device.Feed;
import brightseam.device.MeterRecord;
import brightseam.device.shell.Readings;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Left;
import brightseam.ui.desk.Numbers;
import brightseam.ui.desk.Told;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;

/** Types what a meter shows, with how long until the next reading is due; empty for a meter that is not typed. */
final class TypingForm extends Div {

    TypingForm(Desk desk, Told told, Readings readings, MeterRecord record, Runnable after) {
        if (!(record.meter().feed() instanceof Feed.Typed) || !record.isInUse()) {
            return;
        }
        TextField shown = Forms.text("It shows, " + record.meter().quantity().unit(), "read it now");
        shown.getElement().setAttribute("inputmode", "decimal");
        add(Forms.panel("Type a reading", due(desk, record), Forms.row(shown, Forms.act("That is what it shows",
                () -> told.guarded(() -> {
                    BigDecimal value = Numbers.decimal("it shows", shown.getValue());
                    return told.outcome(() -> readings.type(record.meter().id(), value, desk.origin()));
                }).ifPresent(stored -> {
                    told.done("Stored", MeterWording.value(stored.meter(), stored.typed().orElseThrow().value()
                            .doubleValue()) + " of " + stored.meter().id() + ".");
                    after.run();
                })))));
    }

    private static Paragraph due(Desk desk, MeterRecord record) {
        Paragraph line = new Paragraph();
        line.addClassName("meter-due");
        record.typed().ifPresent(last -> line.add(new Span("Last by " + last.by() + " at "
                + Words.clockTime(last.at().wall(), desk.now().wall(), desk.zone()) + ". ")));
        line.add(new Span("The next one is due "));
        record.nextTypedDue().ifPresentOrElse(
                next -> line.add(new Left(next.since(desk.now()), desk.speed())),
                () -> line.add(new Span("now")));
        line.add(new Span("."));
        return line;
    }
}
