package brightseam.ui.admin;

import brightseam.kernel.SupplyId;
import brightseam.procedure.Vocabulary;
import brightseam.supply.Standing;
import brightseam.supply.Supply;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import brightseam.ui.desk.Csv;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.LabelTexts;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.TwoPresses;
import brightseam.words.Wording;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What touches titanium: lots, single tools and gauges, and how each stands today. */
@Route("shop/supplies")
@PageTitle("Supplies")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class SuppliesView extends DeskPage {

    private final Supplies supplies;
    private final Vocabulary vocabulary;
    private final Select<Supply> gauges = new Select<>();
    private final DeskTable<Supply> table = new DeskTable<Supply>("Every supply, what ends first on top",
            "No supply is registered. Register above the gloves, cloths, solvents, tools and gauges that steps"
                    + " ask for.")
            .text("Supply", supply -> supply.id().value())
            .text("State", supply -> SupplyState.words(supply, today()))
            .text("What it is", this::what)
            .text("Lot, maker, kept for", supply -> supply.lot() + ", " + supply.maker() + ", for "
                    + LabelTexts.keptFor(supply))
            .act("Actions", this::actions);

    SuppliesView(Desk desk, Supplies supplies, Vocabulary vocabulary) {
        super(desk, "Supplies");
        this.supplies = supplies;
        this.vocabulary = vocabulary;
        show(Forms.panel("Register a supply", new SupplyForm(vocabulary, this::register)),
                Forms.panel("Write down a calibration", calibration()),
                Forms.panel("All supplies", table.file(() -> csv(supplies.all())),
                        Forms.row(Links.to("shop/labels", "Print labels"))));
        refresh();
    }

    private void refresh() {
        List<Supply> all = SupplyState.sorted(supplies.all());
        table.show(all);
        gauges.setItems(all.stream().filter(supply -> supply.isGauge() && supply.standing().isUsable()).toList());
    }

    private LocalDate today() {
        return Supplies.day(desk().now());
    }

    private String what(Supply supply) {
        return supply.title() + " (" + vocabulary.supplyName(supply.type()) + ")";
    }

    private void register(SupplyForm form) {
        told().guarded(() -> told().outcome(() -> supplies.execute(form.command(desk().origin()))))
                .ifPresent(supply -> {
                    told().done("Registered", supply.id() + " " + supply.title() + ". Print its label.");
                    form.clear();
                    refresh();
                });
    }

    private Div calibration() {
        gauges.setLabel("Gauge");
        gauges.setItemLabelGenerator(gauge -> gauge.id() + " " + gauge.title());
        TextField until = Forms.text("Calibrated until", "the last day, such as 2027-03-31");
        TextField certificate = Forms.text("Calibration certificate", "its number");
        return Forms.row(gauges, until, certificate, Forms.act("Write it down", () ->
                gauges.getOptionalValue().ifPresentOrElse(gauge -> run("Calibrated", () -> new SupplyCommand.Calibrate(
                        gauge.id(), SupplyForm.day(until.getValue()), certificate.getValue(), desk().origin())),
                        () -> told().refused("Which gauge?", "No gauge is chosen.", "Choose one."))));
    }

    private Component actions(Supply supply) {
        Div actions = new Div();
        actions.addClassName("cell-actions");
        if (!supply.standing().isUsable()) {
            return actions;
        }
        SupplyId id = supply.id();
        if (supply.contamination().isPresent() && supply.isCleanable()) {
            actions.add(reasoned("Declare clean", id, how -> run("Declared clean",
                    () -> new SupplyCommand.DeclareClean(id, how, desk().origin()))));
        } else if (supply.contamination().isEmpty()) {
            actions.add(reasoned("Contaminated", id, what -> run("Contaminated",
                    () -> new SupplyCommand.ReportContaminated(id, what, desk().origin()))));
        }
        if (supply.standing() == Standing.UNOPENED && !supply.isCleanable()) {
            Component opened = Forms.button("Opened", () -> run("Opened",
                    () -> new SupplyCommand.OpenSupply(id, desk().origin())));
            opened.getElement().setAttribute("aria-label", "Opened " + id);
            actions.add(opened);
        }
        actions.add(TwoPresses.forGood("Used up", id.value(), () -> run("Used up",
                () -> new SupplyCommand.UseUp(id, desk().origin()))));
        actions.add(reasoned("Retire", id, reason -> run("Retired",
                () -> new SupplyCommand.RetireSupply(id, reason, desk().origin()))));
        return actions;
    }

    private static Component reasoned(String words, SupplyId id, Consumer<String> act) {
        return TwoPresses.withReason(words, id.value(), act);
    }

    private void run(String word, Supplier<SupplyCommand> command) {
        told().guarded(() -> told().outcome(() -> supplies.execute(command.get()))).ifPresent(after -> {
            told().done(word, after.id() + " " + after.title() + ": " + SupplyState.words(after, today()) + ".");
            refresh();
        });
    }

    private String csv(List<Supply> all) {
        return Csv.write(List.of("supply", "kind", "type", "title", "lot", "maker", "last_day", "kept_for", "state"),
                SupplyState.sorted(all).stream().map(supply -> List.of(supply.id().value(),
                        Wording.words(supply.kind().name()), supply.type(), supply.title(), supply.lot(),
                        supply.maker(), supply.lastDay().map(LocalDate::toString).orElse(""),
                        LabelTexts.keptFor(supply), SupplyState.words(supply, today()))).toList());
    }
}
