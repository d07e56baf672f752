package brightseam.ui.admin;

import brightseam.bins.shell.Bins;
import brightseam.kit.shell.Kits;
import brightseam.line.shell.Stations;
import brightseam.material.shell.Heats;
import brightseam.people.shell.People;
import brightseam.scan.Label;
import brightseam.scan.LabelKind;
import brightseam.scan.shell.LabelPrinter;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.LabelTexts;
import brightseam.words.Wording;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;

/** Prints labels: which kind, which ones, on a label printer or on sheets. */
@Route("shop/labels")
@PageTitle("Labels")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class LabelsView extends DeskPage {

    private final Bins bins;
    private final Stations stations;
    private final Heats heats;
    private final Kits kits;
    private final Supplies supplies;
    private final People people;
    private final Travellers travellers;
    private final Select<LabelKind> kind = new Select<>();
    private final CheckboxGroup<Label> items = new CheckboxGroup<>("Which ones");
    private final Paragraph empty = Forms.note("");
    private final Div printing = Forms.row();

    LabelsView(Desk desk, Bins bins, Stations stations, Heats heats, Kits kits, Supplies supplies, People people,
            Travellers travellers, LabelPrinter printer) {
        super(desk, "Labels");
        this.bins = bins;
        this.stations = stations;
        this.heats = heats;
        this.kits = kits;
        this.supplies = supplies;
        this.people = people;
        this.travellers = travellers;
        kind.setLabel("What the labels are for");
        kind.setItems(LabelKind.values());
        kind.setItemLabelGenerator(one -> Wording.words(one.name()));
        kind.addValueChangeListener(chosen -> offer());
        items.setItemLabelGenerator(label -> label.own().printed() + "  " + label.title());
        items.addClassName("label-choice");
        items.addValueChangeListener(chosen -> printing.setVisible(!chosen.getValue().isEmpty()));
        printing.add(Files.pdf("Label printer: one to a page", "labels.pdf", () -> printer.pages(chosen())),
                Files.pdf("A4 sheets: ten to a sheet", "sheets.pdf", () -> printer.sheets(chosen())));
        show(Forms.panel("Choose", Forms.row(kind, Forms.button("All of them", () ->
                        items.setValue(java.util.Set.copyOf(items.getListDataView().getItems().toList())))),
                empty, items), Forms.panel("Print", Forms.note(desk.isDemo()
                        ? "Every label is marked DEMO." : "Labels carry a Data Matrix, text and a check character."),
                printing));
        kind.setValue(LabelKind.BIN);
    }

    private List<Label> chosen() {
        return items.getValue().stream().sorted(java.util.Comparator.comparing(label -> label.own().id())).toList();
    }

    private void offer() {
        List<Label> offered = labels(kind.getValue());
        items.setItems(offered);
        items.setVisible(!offered.isEmpty());
        printing.setVisible(false);
        empty.setVisible(offered.isEmpty());
        empty.setText("There is none to print a label for. Register one first, or release a traveller.");
    }

    /** Only what is labelled as our own labels are: of another sort there is no symbol that we could read back. */
    private List<Label> labels(LabelKind wanted) {
        boolean demo = desk().isDemo();
        return switch (wanted) {
            case BIN -> bins.all().stream().filter(bin -> !bin.retired() && wanted.owns(bin.id().value()))
                    .map(bin -> LabelTexts.of(bin, demo)).toList();
            case TRAVELLER -> travellers.notEnded().stream().filter(card -> wanted.owns(card.id().value()))
                    .map(card -> LabelTexts.of(card.traveller(), demo)).toList();
            case HEAT -> heats.all().stream().filter(heat -> wanted.owns(heat.id().value()))
                    .map(heat -> LabelTexts.of(heat, demo)).toList();
            case BADGE -> people.all().stream().filter(person -> person.active() && wanted.owns(person.badge().value()))
                    .map(person -> LabelTexts.of(person, demo)).toList();
            case STATION -> stations.all().stream().filter(station -> wanted.owns(station.id().value()))
                    .map(station -> LabelTexts.of(station, demo)).toList();
            case KIT -> kits.open().stream().filter(kit -> wanted.owns(kit.id().value()))
                    .map(kit -> LabelTexts.of(kit, demo)).toList();
            case SUPPLY -> supplies.all().stream()
                    .filter(supply -> supply.standing().isUsable() && wanted.owns(supply.id().value()))
                    .map(supply -> LabelTexts.of(supply, demo)).toList();
        };
    }
}
