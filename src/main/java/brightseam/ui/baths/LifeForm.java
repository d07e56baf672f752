package brightseam.ui.baths;

import brightseam.bath.BathLife;
import brightseam.bath.DissolvedMetal;
import brightseam.line.Bath;
import brightseam.line.BathQuantity;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import brightseam.ui.desk.Told;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;

/** How many more loads a pickle takes before its dissolved titanium passes the limit. */
final class LifeForm extends Div {

    LifeForm(Told told, Bath bath) {
        TextField area = Forms.text("Wetted area of a usual load, m²", "such as 1.6");
        TextField removal = Forms.text("Metal it loses, g/m²", "from a coupon; 20 g/m² is 4.4 µm of titanium");
        bath.terms().removalGramPerSquareMetre().ifPresent(gram -> removal.setValue(gram.toPlainString()));
        Paragraph answer = new Paragraph();
        answer.addClassName("bath-answer");
        answer.getElement().setAttribute("role", "status");
        add(Forms.row(area, removal, Forms.button("Work it out", () -> told.guarded(() -> {
            answer.setText(words(bath, Numbers.decimal("area", area.getValue()),
                    Numbers.decimal("metal", removal.getValue())));
            return Optional.of(true);
        }))), answer);
    }

    /** The answer as a sentence. */
    static String words(Bath bath, BigDecimal areaSquareMetres, BigDecimal removalGramPerSquareMetre) {
        Optional<BigDecimal> limit = Optional.ofNullable(bath.terms().limits().get(BathQuantity.DISSOLVED_TITANIUM))
                .flatMap(limits -> limits.maximum());
        if (limit.isEmpty()) {
            return "No limit for dissolved titanium is set, so there is no end to work out.";
        }
        double metal = areaSquareMetres.multiply(removalGramPerSquareMetre).doubleValue();
        BathLife life = BathLife.of(
                new DissolvedMetal(bath.volumeLitres().doubleValue(), bath.titaniumGramPerLitre().doubleValue()),
                new DissolvedMetal.Load(areaSquareMetres.doubleValue(), metal, 0), limit.get().doubleValue(),
                OptionalDouble.empty());
        String most = Words.quantity(limit.get(), "g/L");
        return switch (life) {
            case BathLife.Left left -> "Takes " + Words.count(left.loads(), "more load", "more loads") + " or "
                    + plain(left.areaSquareMetres()) + " m² until dissolved titanium passes " + most + ".";
            case BathLife.Spent spent -> "Not one more load: it would bring dissolved titanium to "
                    + plain(spent.gramsPerLitreDuring()) + " g/L, above " + most + ".";
            case BathLife.Endless endless -> "Such loads never bring it above " + most + ".";
        };
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }
}
