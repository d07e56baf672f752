package brightseam.ui.baths;

import brightseam.line.Bath;
import brightseam.line.BathCommand;
import brightseam.line.shell.Baths;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.function.Supplier;

/** Says that a tank was emptied and filled anew. */
final class FillForm extends Div {

    FillForm(Desk desk, Told told, Baths baths, Bath bath, Supplier<List<String>> workings) {
        TextField what = Forms.text("What went in", "such as 112 L nitric, 8 L hydrofluoric acid, water to 450 L");
        what.setMaxLength(200);
        what.setWidthFull();
        PasswordField pin = Forms.pin("Your PIN");
        int unproven = bath.suspects().size();
        add(Forms.note("The next fill is number " + (bath.fill().number() + 1) + " and takes nothing in before its"
                + " first good analysis. " + (unproven == 0 ? "Nothing is left unproven by the old one."
                : Words.count(unproven, "traveller", "travellers") + " went in since the last good sample of the old"
                        + " one: analyse that first, or nobody can ever prove it.")),
                what, Forms.row(pin, Forms.act("Filled anew: sign", () -> told.signer(pin).ifPresent(signer ->
                        told.guarded(() -> told.outcome(() -> baths.execute(new BathCommand.MakeUp(bath.station(),
                                what.getValue(), workings.get(), desk.origin(), signer)))).ifPresent(after -> {
                                    told.done("Filled anew", "Fill " + after.fill().number()
                                            + " waits for its first analysis.");
                                    what.clear();
                                })))));
    }
}
