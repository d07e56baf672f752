package brightseam.ui.admin;

import brightseam.bins.BinCommand;
import brightseam.bins.Capacity;
import brightseam.kernel.BinId;
import brightseam.kernel.Origin;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;

/** Keys in how much a bin takes. */
final class CapacityForm extends Div {

    private final TextField bin = Forms.text("Bin", "such as B-0201");
    private final IntegerField travellers = new IntegerField("Travellers at once");
    private final IntegerField pieces = new IntegerField("Pieces at once");
    private final TextField area = new TextField("Area, m²");
    private final TextField mass = new TextField("Mass, kg");

    /** A form that {@code set} sends; whatever is left empty has no limit. */
    CapacityForm(Runnable set) {
        add(Forms.row(bin, travellers, pieces, area, mass, Forms.act("Set capacity", set)),
                Forms.note("What is left empty has no limit. Area and mass are reckoned from the shapes on the page of"
                        + " parts; a lot whose part has none is refused."));
    }

    /** Fills in what {@code id} takes now. */
    void choose(BinId id, Capacity now) {
        bin.setValue(id.value());
        travellers.setValue(now.travellers().orElse(null));
        pieces.setValue(now.pieces().orElse(null));
        area.setValue(now.areaSquareMetres().map(BigDecimal::toPlainString).orElse(""));
        mass.setValue(now.massKilograms().map(BigDecimal::toPlainString).orElse(""));
        travellers.focus();
    }

    /**
     * What was keyed in.
     *
     * @throws IllegalArgumentException where it is no bin's label or no capacity
     */
    BinCommand command(Origin origin) {
        return new BinCommand.SetCapacity(new BinId(bin.getValue().strip()), new Capacity(
                travellers.getOptionalValue(), pieces.getOptionalValue(),
                KeyedNumber.readIfAny("area in m²", area.getValue()),
                KeyedNumber.readIfAny("mass in kg", mass.getValue())), origin);
    }
}
