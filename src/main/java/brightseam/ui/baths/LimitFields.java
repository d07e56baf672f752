package brightseam.ui.baths;

import brightseam.kernel.Limits;
import brightseam.line.AnalysisDue;
import brightseam.line.BathQuantity;
import brightseam.line.BathTerms;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A minimum and a maximum for each quantity, and when an analysis is due; what is left empty is not limited. */
final class LimitFields extends Div {

    private final Map<BathQuantity, TextField> minimum = new EnumMap<>(BathQuantity.class);
    private final Map<BathQuantity, TextField> maximum = new EnumMap<>(BathQuantity.class);
    private final TextField hours = Forms.text("Analysis due after, h", "since the good sample was taken");
    private final TextField loads = Forms.text("Analysis due after, loads", "since then");
    private final TextField area = Forms.text("Analysis due after, m²", "wetted area since then, where known");
    private final TextField removal = Forms.text("Metal a usual soak takes off, g/m²", "from coupons; pickles only");

    LimitFields(Optional<BathTerms> now) {
        addClassName("bath-limits");
        for (BathQuantity quantity : BathQuantity.values()) {
            TextField low = new TextField(BathWords.field(quantity) + ", min");
            TextField high = new TextField(BathWords.field(quantity) + ", max");
            minimum.put(quantity, low);
            maximum.put(quantity, high);
            add(Forms.row(low, high));
        }
        add(new H3("When an analysis is due"), Forms.row(hours, loads, area), new H3("Estimate of dissolved titanium"),
                Forms.row(removal));
        now.ifPresent(this::fill);
    }

    /**
     * The terms as keyed.
     *
     * @throws IllegalArgumentException naming the field that has a wrong form
     */
    BathTerms terms() {
        TreeMap<BathQuantity, Limits> limits = new TreeMap<>();
        for (BathQuantity quantity : BathQuantity.values()) {
            Limits keyed = keyed(quantity);
            if (!keyed.equals(Limits.none())) {
                limits.put(quantity, keyed);
            }
        }
        return new BathTerms(limits, new AnalysisDue(
                number(hours).map(due -> Duration.ofMinutes(due.multiply(new BigDecimal("60")).longValue())),
                number(loads).map(count -> Numbers.whole(loads.getLabel(), count.toPlainString())), number(area)),
                number(removal));
    }

    private Limits keyed(BathQuantity quantity) {
        Optional<BigDecimal> low = number(minimum.get(quantity));
        Optional<BigDecimal> high = number(maximum.get(quantity));
        if (low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0) {
            throw new IllegalArgumentException(BathWords.quantity(quantity) + ": the maximum is below the minimum");
        }
        return new Limits(low, high);
    }

    private void fill(BathTerms terms) {
        terms.limits().forEach((quantity, limits) -> {
            limits.minimum().ifPresent(low -> minimum.get(quantity).setValue(low.toPlainString()));
            limits.maximum().ifPresent(high -> maximum.get(quantity).setValue(high.toPlainString()));
        });
        terms.due().after().ifPresent(after -> hours.setValue(String.valueOf(after.toMinutes() / 60.0)));
        terms.due().loads().ifPresent(count -> loads.setValue(String.valueOf(count)));
        terms.due().areaSquareMetres().ifPresent(most -> area.setValue(most.toPlainString()));
        terms.removalGramPerSquareMetre().ifPresent(gram -> removal.setValue(gram.toPlainString()));
    }

    private static Optional<BigDecimal> number(TextField field) {
        return Numbers.optional(field.getLabel(), field.getValue());
    }
}
