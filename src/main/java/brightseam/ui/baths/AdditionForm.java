package brightseam.ui.baths;

import brightseam.bath.VolumeStrength;
import brightseam.line.Addend;
import brightseam.line.Addition;
import brightseam.line.Bath;
import brightseam.line.BathCommand;
import brightseam.line.BathQuantity;
import brightseam.line.shell.Baths;
import brightseam.people.Signer;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Litres of what was added, filled in by what was worked out, changed to what really went in. */
final class AdditionForm extends Div {

    private final Desk desk;
    private final Told told;
    private final Baths baths;
    private final Bath bath;
    private final Map<Addend, TextField> litres = new EnumMap<>(Addend.class);
    private final TextField reason = Forms.text("Reason for the addition", "such as: below the minimum");
    private final Div result = new Div();
    private List<String> workings = List.of();

    AdditionForm(Desk desk, Told told, Baths baths, Bath bath) {
        this.desk = desk;
        this.told = told;
        this.baths = baths;
        this.bath = bath;
        result.getElement().setAttribute("role", "status");
        reason.setMaxLength(200);
        PasswordField pin = Forms.pin("Your PIN");
        Div row = Forms.row();
        addends().forEach(addend -> {
            TextField field = new TextField("Added, L of " + BathWords.addend(addend));
            litres.put(addend, field);
            row.add(field);
        });
        add(Forms.note("Concentrate asks for an analysis before the next load. What went off as vapour is topped up"
                + " with water."), row, Forms.row(reason, pin, Forms.act("Record and sign", () ->
                told.signer(pin).ifPresent(this::record))));
    }

    /** The lines of what was worked out last. */
    List<String> workings() {
        return workings;
    }

    /** The fields that the amounts are worked out from. */
    Component sheet() {
        return switch (bath.liquid()) {
            case PICKLING_ACID -> acidSheet();
            case ALKALINE_CLEANER -> cleanerSheet();
            case RINSE_WATER, DEIONISED_WATER, AIR ->
                Forms.note("Nothing to work out: water is let in and out until the numbers are in order.");
        };
    }

    private List<Addend> addends() {
        return switch (bath.liquid()) {
            case PICKLING_ACID -> List.of(Addend.NITRIC_ACID, Addend.HYDROFLUORIC_ACID, Addend.WATER);
            case ALKALINE_CLEANER -> List.of(Addend.CLEANER_CONCENTRATE, Addend.WATER);
            case RINSE_WATER -> List.of(Addend.WATER);
            case DEIONISED_WATER -> List.of(Addend.DEIONISED_WATER);
            case AIR -> List.of();
        };
    }

    private Component acidSheet() {
        TextField inTank = filled("In the tank now, L", bath.volumeLitres().toPlainString());
        TextField nitric = filled("Nitric acid wanted, vol %", "25");
        TextField hydrofluoric = filled("Hydrofluoric acid wanted, vol %", "1.7");
        TextField level = filled("Level afterwards, L", bath.volumeLitres().toPlainString());
        inTank.setHelperText("0 works out a new fill");
        return new Div(Forms.row(inTank, nitric, hydrofluoric, level, Forms.button("Work it out", () -> work(() -> {
            BigDecimal now = Numbers.decimal("in the tank now", inTank.getValue());
            return MakeUpSheet.acid(now, now.signum() == 0 ? new VolumeStrength(0, 0)
                    : new VolumeStrength(last(BathQuantity.NITRIC_ACID), last(BathQuantity.HYDROFLUORIC_ACID)),
                    new VolumeStrength(
                            Numbers.decimal("nitric acid wanted", nitric.getValue()).doubleValue(),
                            Numbers.decimal("hydrofluoric acid wanted", hydrofluoric.getValue()).doubleValue()),
                    Numbers.decimal("level afterwards", level.getValue()));
        }))), result, Forms.note("Acid into water, never water into acid; draw off and add as the safety data sheet and"
                + " the shop's licensed practice say."));
    }

    private Component cleanerSheet() {
        TextField wanted = filled("Cleaner strength wanted, %", "6");
        return new Div(Forms.row(wanted, Forms.button("Work it out", () -> work(() -> MakeUpSheet.cleaner(
                bath.volumeLitres(), BigDecimal.valueOf(last(BathQuantity.CLEANER_STRENGTH)),
                Numbers.decimal("cleaner strength wanted", wanted.getValue()))))), result);
    }

    private double last(BathQuantity quantity) {
        return bath.lastAnalysis().map(analysis -> analysis.values().get(quantity)).map(BigDecimal::doubleValue)
                .orElseThrow(() -> new IllegalArgumentException(
                        "this fill has no analysis to start from: analyse it first, or enter 0 L for a new fill"));
    }

    private void work(java.util.function.Supplier<MakeUpSheet> sheet) {
        told.guarded(() -> Optional.of(sheet.get())).ifPresent(worked -> {
            workings = worked.workings();
            result.removeAll();
            worked.problem().ifPresent(problem -> result.add(new Paragraph(problem)));
            if (worked.problem().isEmpty()) {
                result.add(Histories.workings(worked.workings()));
            }
            worked.litres().forEach((addend, amount) -> litres.get(addend).setValue(amount.toPlainString()));
        });
    }

    private void record(Signer signer) {
        told.guarded(() -> {
            List<BathCommand> additions = new ArrayList<>();
            litres.forEach((addend, field) -> Numbers.optional(BathWords.addend(addend), field.getValue())
                    .filter(amount -> amount.signum() != 0)
                    .ifPresent(amount -> additions.add(new BathCommand.RecordAddition(bath.station(),
                            new Addition(addend, amount, reason.getValue(), workings), desk.origin(), signer))));
            if (additions.isEmpty()) {
                throw new IllegalArgumentException("nothing was added: enter litres of at least one");
            }
            return told.outcome(() -> baths.execute(bath.station(), additions));
        }).ifPresent(after -> {
            told.done("Recorded", after.strengthenedAt().isPresent()
                    ? "Mix it, take a sample and enter the analysis before the next load." : "The bath goes on.");
            litres.values().forEach(TextField::clear);
            reason.clear();
        });
    }

    private static TextField filled(String label, String value) {
        TextField field = new TextField(label);
        field.setValue(value);
        return field;
    }
}
