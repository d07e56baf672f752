package brightseam.ui.admin;

import brightseam.kernel.PartNumber;
import brightseam.kit.shell.Kits;
import brightseam.part.PartCommand;
import brightseam.part.shell.Parts;
import brightseam.ui.admin.ShapeEntry.Field;
import brightseam.ui.desk.Csv;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The shapes of the parts on the drawings. */
@Route("shop/parts")
@PageTitle("Parts")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class PartsView extends DeskPage {

    private final Parts parts;
    private final Kits kits;
    private final TextField number = Forms.text("Part number", "as on the drawing, such as LF-101");
    private final Select<ShapeEntry> kind = new Select<>();
    private final Map<Field, TextField> measures = new EnumMap<>(Field.class);
    private final TextField weight = Forms.text("Weight of one piece, g", "from a scale; may be empty");
    private final DeskTable<PartLine> table = new DeskTable<PartLine>("Every part with a shape, and those of open kits",
            "No part has a shape and no open kit has parts. Give the first one its shape above.")
            .text("Part", PartLine::number)
            .text("In open kits as", PartLine::description)
            .text("Shape", PartLine::shape)
            .text("Area of a piece", PartLine::area)
            .text("Mass of a piece", PartLine::mass)
            .act("Actions", this::action);

    PartsView(Desk desk, Parts parts, Kits kits) {
        super(desk, "Parts");
        this.parts = parts;
        this.kits = kits;
        show(Forms.panel("Give a part its shape", form(), Forms.note("Plain geometry, without holes and threads; a part"
                + " with many of them is a fitting, measured on its drawing. Baskets with a limit of area or mass,"
                + " and the life of the baths, are reckoned with it.")),
                Forms.panel("All parts", table.file(() -> csv(lines()))));
        table.show(lines());
    }

    private Div form() {
        kind.setLabel("Shape");
        kind.setItems(ShapeEntry.values());
        kind.setItemLabelGenerator(ShapeEntry::label);
        for (Field field : Field.values()) {
            measures.put(field, new TextField(field.label()));
        }
        kind.addValueChangeListener(chosen -> measures.forEach((field, text) ->
                text.setVisible(chosen.getValue().fields().contains(field))));
        kind.setValue(ShapeEntry.TUBE);
        Div row = Forms.row(number, kind);
        measures.values().forEach(row::add);
        row.add(weight, Forms.act("Give shape", this::give));
        return row;
    }

    private void give() {
        told().guarded(() -> told().outcome(() -> parts.execute(new PartCommand.GiveShape(
                new PartNumber(number.getValue().strip()), kind.getValue().shape(texts()),
                ShapeEntry.weight(weight.getValue()), desk().origin())))).ifPresent(part -> {
                    told().done("Shape given", part.number() + ": " + ShapeEntry.words(part.shape()) + ".");
                    measures.values().forEach(TextField::clear);
                    number.clear();
                    weight.clear();
                    table.show(lines());
                });
    }

    private Map<Field, String> texts() {
        Map<Field, String> texts = new EnumMap<>(Field.class);
        measures.forEach((field, text) -> texts.put(field, text.getValue()));
        return texts;
    }

    private Component action(PartLine line) {
        NativeButton choose = Forms.button(line.part().isPresent() ? "Change" : "Give", () -> choose(line));
        choose.getElement().setAttribute("aria-label", choose.getText() + " " + line.number());
        return choose;
    }

    /** Fills the form with what is known of the part. */
    private void choose(PartLine line) {
        number.setValue(line.number());
        measures.values().forEach(TextField::clear);
        weight.clear();
        line.part().ifPresent(part -> {
            kind.setValue(ShapeEntry.of(part.shape()));
            ShapeEntry.texts(part.shape()).forEach((field, text) -> measures.get(field).setValue(text));
            part.weighedGrams().ifPresent(grams -> weight.setValue(Words.plain(grams)));
        });
        kind.focus();
    }

    private List<PartLine> lines() {
        return PartLine.of(kits.open(), parts.all());
    }

    private static String csv(List<PartLine> lines) {
        return Csv.write(List.of("part_number", "description", "shape", "area_of_a_piece", "mass_of_a_piece"),
                lines.stream().map(line -> List.of(line.number(), line.description(), line.shape(), line.area(),
                        line.mass())).toList());
    }
}
