package brightseam.ui.baths;

import brightseam.line.Bath;
import brightseam.line.BathQuantity;
import brightseam.line.BathTerms;
import brightseam.line.BathVerdict;
import brightseam.line.Liquid;
import brightseam.traveller.shell.ProcessControl;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import brightseam.ui.desk.Told;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The fields of one analysis. What is signed is what was shown worked out, or it is shown anew first. */
final class SampleForm extends Div {

    private static final Set<BathQuantity> TITRATED = EnumSet.of(BathQuantity.NITRIC_ACID,
            BathQuantity.HYDROFLUORIC_ACID, BathQuantity.DISSOLVED_TITANIUM, BathQuantity.ACID_RATIO);
    private static final int MINUTES_MAX = 60 * 24 * 14;

    private final Desk desk;
    private final Told told;
    private final ProcessControl control;
    private final Bath bath;
    private final TextField sample = Forms.text("Sample number", "as on the bottle");
    private final TextField age = Forms.text("Taken, minutes ago", "0 for now");
    private final TextField method = Forms.text("Method", "such as meter and test kit");
    private final Map<BathQuantity, TextField> direct = new EnumMap<>(BathQuantity.class);
    private final Optional<TitrationFields> titration;
    private final Div result = new Div();
    private final PasswordField pin = Forms.pin("Your PIN");
    private Optional<Worked> shown = Optional.empty();

    SampleForm(Desk desk, Told told, ProcessControl control, Bath bath) {
        this.desk = desk;
        this.told = told;
        this.control = control;
        this.bath = bath;
        this.titration = Optional.of(bath).filter(acid -> acid.liquid() == Liquid.PICKLING_ACID)
                .map(acid -> new TitrationFields(acid.titaniumGramPerLitre()));
        age.setValue("0");
        add(titration.isPresent() ? Forms.row(sample, age) : Forms.row(sample, age, method));
        titration.ifPresent(this::add);
        fields();
        result.addClassName("bath-result");
        result.getElement().setAttribute("role", "status");
        add(Forms.row(Forms.button("Work it out", this::workOut)), result,
                Forms.row(pin, Forms.act("Sign and enter", this::enter)));
    }

    private void fields() {
        Div row = Forms.row();
        bath.terms().limits().keySet().stream().filter(BathQuantity::isEntered)
                .filter(quantity -> titration.isEmpty() || !TITRATED.contains(quantity)).forEach(quantity -> {
                    TextField field = Forms.text(BathWords.field(quantity),
                            Words.limits(bath.terms().limits().get(quantity), quantity.unit()));
                    direct.put(quantity, field);
                    row.add(field);
                });
        add(new H3(titration.isPresent() ? "Read off at the tank" : "Values"), row);
    }

    private Worked worked() {
        Worked acids = titration.map(fields -> fields.burette().work())
                .orElseGet(() -> new Worked(new TreeMap<>(), List.of(), Optional.empty()));
        SortedMap<BathQuantity, BigDecimal> values = new TreeMap<>(acids.values());
        direct.forEach((quantity, field) -> values.put(quantity,
                Numbers.decimal(BathWords.quantity(quantity), field.getValue())));
        return new Worked(values, acids.workings(), acids.contradiction());
    }

    private void workOut() {
        told.guarded(() -> {
            Worked worked = worked();
            show(worked);
            return Optional.of(worked);
        });
    }

    private void show(Worked worked) {
        shown = Optional.of(worked);
        result.removeAll();
        if (!worked.workings().isEmpty()) {
            result.add(new H3("How it is worked out"), Histories.workings(worked.workings()));
        }
        worked.contradiction().ifPresent(wrong -> result.add(new Paragraph(wrong)));
        if (worked.contradiction().isEmpty()) {
            result.add(new Paragraph(verdict(worked)));
        }
    }

    private String verdict(Worked worked) {
        SortedMap<BathQuantity, BigDecimal> all = BathTerms.withRatio(worked.values());
        List<BathQuantity> outside = bath.terms().outOfLimits(all);
        String values = all.entrySet().stream().map(found -> BathWords.quantity(found.getKey()) + " "
                + BathWords.value(found.getKey(), found.getValue())).collect(Collectors.joining(", "));
        return values + ". " + (outside.isEmpty() ? "Everything in limits."
                : "Out of limits: " + outside.stream().map(BathWords::quantity).collect(Collectors.joining(", "))
                        + ". Entering it locks the bath.");
    }

    private void enter() {
        told.guarded(() -> {
            Worked worked = worked();
            if (worked.contradiction().isPresent()) {
                show(worked);
                told.refused("Not entered", worked.contradiction().get(), "Correct the readings or analyse again.");
                return Optional.empty();
            }
            if (!shown.equals(Optional.of(worked))) {
                show(worked);
                told.refused("Look first", "These values have not been shown yet.",
                        "Look at how they are worked out below, then sign.");
                return Optional.empty();
            }
            return told.signer(pin).flatMap(signer -> told.outcome(() -> control.enterAnalysis(desk.actor(),
                    bath.station(), new ProcessControl.Entered(sample.getValue(), words(), age(), worked.values(),
                            worked.workings()), signer)));
        }).ifPresent(this::entered);
    }

    private Duration age() {
        int minutes = Numbers.whole("taken, minutes ago", age.getValue());
        if (minutes < 0 || minutes > MINUTES_MAX) {
            throw new IllegalArgumentException("taken, minutes ago: from 0 to " + MINUTES_MAX);
        }
        return Duration.ofMinutes(minutes);
    }

    private String words() {
        return titration.map(TitrationFields::method).orElseGet(method::getValue);
    }

    private void entered(BathVerdict verdict) {
        if (verdict.cause().isPresent()) {
            told.refused("Entered, bath locked", "Sample " + sample.getValue() + " is out of limits. "
                    + LockForms.suspects(verdict), "Correct the bath and analyse it again; a good analysis opens it.");
        } else {
            told.done("Entered", "Sample " + sample.getValue() + ": everything in limits.");
        }
        sample.clear();
        direct.values().forEach(TextField::clear);
        result.removeAll();
        shown = Optional.empty();
    }
}
