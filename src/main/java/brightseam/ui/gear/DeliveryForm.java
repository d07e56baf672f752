package brightseam.ui.gear;

import brightseam.chamber.ArgonCommand;
import brightseam.chamber.ArgonForm;
import brightseam.chamber.ArgonPurity;
import brightseam.chamber.ArgonVessel;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Vocabulary;
import brightseam.supply.SupplyCommand;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/** What a delivery of argon says: vessel, certificate, first reading. */
final class DeliveryForm extends Div {

    private final TextField label = Forms.text("Label", "begins with G-, such as G-0610");
    private final Select<ArgonForm> form = new Select<>();
    private final TextField title = Forms.text("Title", "such as Argon bundle, 12 x 50 L");
    private final TextField lot = Forms.text("Lot", "the filler's, on the collar or the certificate");
    private final TextField maker = Forms.text("Filled by", "whose gas it is");
    private final TextField lastDay = Forms.text("Last day", "such as 2027-03-31; empty where none is stated");
    private final TextField volume = Forms.text("Volume, L", "");
    private final TextField full = Forms.text("Filling pressure, bar", "at 15 °C, such as 200");
    private final TextField boilOff = Forms.text("Boil-off, % a day", "as its maker states it");
    private final TextField oxygen = Forms.text("Oxygen, ppm", "at most, by the certificate");
    private final TextField moisture = Forms.text("Moisture, ppm", "at most, by the certificate");
    private final TextField certificate = Forms.text("Certificate", "its number");
    private final ReadingFields reading = new ReadingFields(" as delivered");

    DeliveryForm(Runnable deliver) {
        addClassName("gear-terms");
        form.setLabel("Comes in a");
        form.setItems(ArgonForm.values());
        form.setItemLabelGenerator(one -> one == null ? "" : GasWords.form(one));
        form.addValueChangeListener(chosen -> ask(Optional.ofNullable(chosen.getValue())));
        ask(Optional.empty());
        add(Forms.row(label, form, title, lot, maker, lastDay), Forms.row(volume, full, boilOff),
                Forms.row(oxygen, moisture, certificate), reading,
                Forms.row(Forms.act("Enter the delivery", deliver)));
    }

    /**
     * The supply as it is registered.
     *
     * @throws IllegalArgumentException naming the field that is not filled in as it should be
     */
    SupplyCommand.RegisterSupply supply(Vocabulary vocabulary, Origin origin) {
        Vocabulary.SupplyType type = vocabulary.supplies().get(chosen().supplyType());
        return new SupplyCommand.RegisterSupply(id(), type, title.getValue(), lot.getValue(), maker.getValue(),
                lastDay.isEmpty() ? Optional.empty() : Optional.of(day(lastDay.getValue())), type.mayTouch(), origin);
    }

    /** The argon in it, as {@link #supply} throws. */
    ArgonCommand.Deliver argon(Origin origin, Moment now) {
        return new ArgonCommand.Deliver(id(), vessel(), new ArgonPurity(
                Numbers.decimal("oxygen", oxygen.getValue()), Numbers.decimal("moisture", moisture.getValue()),
                certificate.getValue()), reading.reading(now), origin);
    }

    /** Empties what the next one does not share. */
    void clear() {
        List.of(label, lot, certificate).forEach(TextField::clear);
        reading.clear();
    }

    private void ask(Optional<ArgonForm> asked) {
        boolean liquid = asked.filter(ArgonForm::isLiquid).isPresent();
        volume.setHelperText(liquid ? "of liquid when full" : "water volume of all its cylinders together");
        full.setVisible(asked.isPresent() && !liquid);
        boilOff.setVisible(liquid);
        reading.ask(asked);
    }

    private ArgonVessel vessel() {
        ArgonForm chosen = chosen();
        return new ArgonVessel(chosen, Numbers.decimal("volume", volume.getValue()),
                chosen.isLiquid() ? Optional.empty() : Numbers.optional("filling pressure", full.getValue()),
                chosen.isLiquid() ? Optional.of(Numbers.decimal("boil-off", boilOff.getValue())) : Optional.empty());
    }

    private ArgonForm chosen() {
        return form.getOptionalValue()
                .orElseThrow(() -> new IllegalArgumentException("comes in a: choose one"));
    }

    private SupplyId id() {
        String text = label.getValue().strip();
        if (!text.startsWith("G-")) {
            throw new IllegalArgumentException("label: begins with G-");
        }
        return new SupplyId(text);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException other) {
            throw new IllegalArgumentException("last day: year, month and day, such as 2027-03-31", other);
        }
    }
}
