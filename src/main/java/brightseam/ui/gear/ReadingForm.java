package brightseam.ui.gear;

import brightseam.chamber.ArgonCommand;
import brightseam.chamber.ArgonSource;
import brightseam.kernel.SupplyId;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import java.util.Optional;

/** Enters what somebody read off a source. */
final class ReadingForm extends Div {

    private final Desk desk;
    private final Told told;
    private final ArgonDesk argon;
    private final Select<ArgonSource> source = new Select<>();
    private final ReadingFields fields = new ReadingFields("");
    private final Checkbox corrects = new Checkbox("The reading before was wrong; this one takes its place");

    ReadingForm(Desk desk, Told told, ArgonDesk argon, Runnable after) {
        this.desk = desk;
        this.told = told;
        this.argon = argon;
        source.setLabel("Source");
        source.setItems(argon.readable());
        source.setItemLabelGenerator(one -> one == null ? "" : one.id() + " " + argon.title(one.id()));
        source.addClassName("argon-choice");
        corrects.setVisible(false);
        source.addValueChangeListener(chosen -> {
            Optional<ArgonSource> one = Optional.ofNullable(chosen.getValue());
            fields.ask(one.map(known -> known.vessel().form()));
            corrects.setVisible(one.flatMap(ArgonSource::last).isPresent());
        });
        add(Forms.row(source), fields, corrects,
                Forms.row(Forms.act("Enter the reading", () -> enter(after))));
    }

    /** Takes up a source whose label was scanned. */
    void scanned(SupplyId supply) {
        argon.readable().stream().filter(one -> one.id().equals(supply)).findFirst().ifPresent(source::setValue);
    }

    private void enter(Runnable after) {
        told.guarded(() -> {
            SupplyId id = source.getOptionalValue().map(ArgonSource::id)
                    .orElseThrow(() -> new IllegalArgumentException("source: scan its label or choose it"));
            return told.outcome(() -> argon.store().execute(new ArgonCommand.EnterReading(id,
                    fields.reading(desk.now()).orElseThrow(() -> new IllegalArgumentException(
                            "enter what the gauge shows")), corrects.getValue(), desk.origin())));
        }).ifPresent(read -> {
            told.done("Entered", read.id() + ": " + GasWords.reading(read.last().orElseThrow(), desk.now().wall(),
                    desk.zone()) + ".");
            fields.clear();
            corrects.setValue(false);
            after.run();
        });
    }
}
