package brightseam.ui.baths;

import brightseam.bath.FluorideBasis;
import brightseam.bath.TitaniumAcidity;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** The burette readings of a pickle's sample. */
final class TitrationFields extends Div {

    private final TextField sample = Forms.text("Sample in the flask, mL", "bath, before it was diluted");
    private final TextField hydroxide = Forms.text("Sodium hydroxide, mol/L", "as standardised");
    private final TextField used = Forms.text("Sodium hydroxide used, mL", "burette");
    private final TextField blank = Forms.text("Blank, mL", "the flask without a sample");
    private final Select<Burette.By> by = new Select<>();
    private final TextField strength = Forms.text("Fluoride titrant, mol/L", "as standardised");
    private final TextField reading = Forms.text("Fluoride titrant used, mL", "burette");
    private final TextField fluorideSample = Forms.text("Sample for fluoride, mL", "bath, before it was diluted");
    private final TextField diluted = Forms.text("Diluted to, mL", "flask");
    private final TextField titanium = Forms.text("Dissolved titanium, g/L", "by its own analysis");
    private final Select<FluorideBasis> basis = new Select<>();
    private final Select<TitaniumAcidity> acidity = new Select<>();

    TitrationFields(BigDecimal titaniumEstimate) {
        by.setLabel("Fluoride by");
        by.setItems(Burette.By.values());
        by.setItemLabelGenerator(TitrationFields::words);
        by.addValueChangeListener(chosen -> ask(chosen.getValue()));
        by.setValue(Burette.By.LANTHANUM);
        basis.setLabel("The fluoride method finds");
        basis.setItems(FluorideBasis.values());
        basis.setItemLabelGenerator(found -> switch (found) {
            case FREE -> "free fluoride only";
            case TOTAL -> "all fluoride, titanium's too";
        });
        basis.setValue(FluorideBasis.FREE);
        acidity.setLabel("Titanium in the hydroxide titration");
        acidity.setItems(TitaniumAcidity.values());
        acidity.setItemLabelGenerator(counted -> switch (counted) {
            case NOT_COUNTED -> "is not counted";
            case COMPLEX_WHOLE -> "counts as two acids";
            case COMPLEX_BROKEN -> "counts as six acids";
        });
        acidity.setValue(TitaniumAcidity.COMPLEX_WHOLE);
        blank.setValue("0");
        titanium.setValue(titaniumEstimate.setScale(1, RoundingMode.HALF_UP).toPlainString());
        add(new H3("All acid, with sodium hydroxide"), Forms.row(sample, hydroxide, used, blank),
                new H3("Fluoride"), Forms.row(by, strength, reading, fluorideSample, diluted),
                new H3("Titanium"), Forms.row(titanium, basis, acidity),
                Forms.note("The last two belong to the shop's written method, which goes before anything set here."));
    }

    /** What is keyed now. */
    Burette burette() {
        return new Burette(sample.getValue(), hydroxide.getValue(), used.getValue(), blank.getValue(),
                new Burette.Fluoride(by.getValue(), reading.getValue(), strength.getValue(),
                        fluorideSample.getValue(), diluted.getValue()),
                titanium.getValue(), basis.getValue(), acidity.getValue());
    }

    /** How it was done, for the record. */
    String method() {
        return "sodium hydroxide, " + words(by.getValue());
    }

    private void ask(Burette.By chosen) {
        boolean electrode = chosen == Burette.By.ELECTRODE;
        strength.setVisible(!electrode);
        diluted.setVisible(electrode);
        reading.setLabel(electrode ? "Electrode reads, mg/L fluoride" : "Fluoride titrant used, mL");
        reading.setHelperText(electrode ? "in the diluted sample" : "burette");
    }

    private static String words(Burette.By by) {
        return switch (by) {
            case LANTHANUM -> "lanthanum nitrate";
            case THORIUM -> "thorium nitrate";
            case ELECTRODE -> "fluoride electrode";
        };
    }
}
