package brightseam.ui.admin;

import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.Vocabulary.SupplyType;
import brightseam.supply.SupplyCommand;
import brightseam.ui.desk.Forms;
import brightseam.words.Wording;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The form that registers a supply. */
final class SupplyForm extends Div {

    private final TextField label = Forms.text("Label", "begins with G-, such as G-0115");
    private final Select<SupplyType> type = new Select<>();
    private final TextField title = Forms.text("Title", "such as Acetone, 1 litre bottle");
    private final TextField lot = Forms.text("Lot or serial number", "the maker's");
    private final TextField maker = Forms.text("Maker", "whose lot it is");
    private final TextField lastDay = Forms.text("Last day", "such as 2027-03-31; of a gauge, its calibration's");
    private final CheckboxGroup<Surface> mayTouch = new CheckboxGroup<>("Kept for titanium that is");

    SupplyForm(Vocabulary vocabulary, Consumer<SupplyForm> register) {
        type.setLabel("Type");
        type.setItems(vocabulary.supplies().values().stream()
                .sorted(Comparator.comparing(SupplyType::kind).thenComparing(SupplyType::name)).toList());
        type.setItemLabelGenerator(one -> one == null ? "" : Wording.words(one.kind().name()) + ": " + one.name());
        type.addValueChangeListener(chosen -> Optional.ofNullable(chosen.getValue())
                .ifPresent(one -> mayTouch.setValue(one.mayTouch())));
        mayTouch.setItems(Surface.values());
        mayTouch.setItemLabelGenerator(surface -> Wording.words(surface.name()));
        add(Forms.row(label, type, title, lot, maker, lastDay, mayTouch,
                Forms.act("Register", () -> register.accept(this))));
    }

    /**
     * What the form asks for.
     *
     * @throws IllegalArgumentException naming the field that is not filled in as it should be
     */
    SupplyCommand command(Origin origin) {
        if (!label.getValue().strip().startsWith("G-")) {
            throw new IllegalArgumentException("supply label: begins with G-");
        }
        SupplyType chosen = type.getOptionalValue()
                .orElseThrow(() -> new IllegalArgumentException("type: choose one"));
        Optional<LocalDate> last = lastDay.isEmpty() ? Optional.empty() : Optional.of(day(lastDay.getValue()));
        return new SupplyCommand.RegisterSupply(new SupplyId(label.getValue().strip()), chosen, title.getValue(),
                lot.getValue(), maker.getValue(), last, mayTouch.getValue(), origin);
    }

    /** Empties what the next one does not share. */
    void clear() {
        List.of(label, lot).forEach(TextField::clear);
    }

    /**
     * The day that {@code text} writes as year, month and day.
     *
     * @throws IllegalArgumentException where it writes none
     */
    static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException other) {
            throw new IllegalArgumentException("last day: year, month and day, such as 2027-03-31", other);
        }
    }
}
