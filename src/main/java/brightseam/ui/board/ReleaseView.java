package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.KitCommand;
import brightseam.kit.KitLine;
import brightseam.kit.shell.Kits;
import brightseam.material.shell.Heats;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.scan.OwnLabel;
import brightseam.scan.shell.LabelPrinter;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.ReleaseOrder;
import brightseam.traveller.shell.Releases;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.LabelTexts;
import brightseam.ui.desk.Links;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;

/** Releases travellers: a kit, its parts list, a heat for every line, then labels. */
@Route("release")
@PageTitle("Release")
@RolesAllowed("LEAD")
class ReleaseView extends DeskPage {

    private final Kits kits;
    private final Heats heats;
    private final ProcedureLibrary procedures;
    private final Travellers travellers;
    private final Releases releases;
    private final LabelPrinter printer;
    private final Select<Kit> choice = new Select<>();
    private final Div lines = new Div();
    private final Div released = new Div();
    private Optional<KitId> chosen = Optional.empty();

    ReleaseView(Desk desk, Kits kits, Heats heats, ProcedureLibrary procedures, Travellers travellers,
            Releases releases, LabelPrinter printer) {
        super(desk, "Release travellers");
        this.kits = kits;
        this.heats = heats;
        this.procedures = procedures;
        this.travellers = travellers;
        this.releases = releases;
        this.printer = printer;
        choice.setLabel("Open kits");
        choice.setItemLabelGenerator(kit -> kit.id() + " " + kit.title());
        choice.setPlaceholder("choose a kit");
        choice.addValueChangeListener(change -> choose(Optional.ofNullable(change.getValue()).map(Kit::id)));
        Div opening = KitForms.open(desk, told(), kits, kit -> {
            offerKits();
            choice.setValue(kit);
        });
        show(Forms.panel("1. Kit", choice, Forms.note("Or open a new one:"), opening), lines, released);
        offerKits();
    }

    private void offerKits() {
        choice.setItems(kits.open());
        choice.setHelperText(kits.open().isEmpty() ? "No kit is open. Open one below." : "");
    }

    private void choose(Optional<KitId> kit) {
        chosen = kit;
        released.removeAll();
        showLines();
    }

    private Kit kit() {
        return kits.find(chosen.orElseThrow()).orElseThrow().state();
    }

    private void showLines() {
        lines.removeAll();
        if (chosen.isEmpty()) {
            return;
        }
        Kit kit = kit();
        List<String> approved = procedures.current().stream().map(procedure -> procedure.ref().id()).toList();
        lines.add(Forms.panel("2. Parts list of " + chosen.get(),
                new ListForm(told(), this::kit, approved, this::addLines)));
        List<Traveller> own = travellers.ofKit(chosen.get()).stream().map(Card::traveller).toList();
        List<LineChoice> open = KitLines.unreleased(kit, own).stream()
                .map(line -> new LineChoice(line, procedures.current(line.procedure()), heats.all())).toList();
        Div actions = Forms.row(Forms.act("Release the lines that have a heat", () -> release(open)));
        actions.setVisible(!open.isEmpty());
        lines.add(Forms.panel("3. Lines to release", table(kit).show(open), actions));
    }

    private static DeskTable<LineChoice> table(Kit kit) {
        return new DeskTable<LineChoice>("Lines of the kit that no traveller was released for",
                kit.lines().isEmpty() ? "The parts list is empty. Type a line above, or take a whole list."
                        : "Every line of this kit is released. Add lines above to release more.")
                .text("Line", choice -> String.valueOf(choice.line().lineNumber()))
                .text("Part", choice -> choice.line().partNumber() + " rev " + choice.line().drawingRevision())
                .text("Description", choice -> choice.line().description())
                .text("Pieces", choice -> String.valueOf(choice.line().quantity()))
                .text("Procedure", LineChoice::procedureWords)
                .cell("Heat", LineChoice::heatChoice, LineChoice::chosen).text("Note", LineChoice::note);
    }

    private void addLines(List<KitLine> more) {
        told().outcome(() -> kits.execute(new KitCommand.AddLines(chosen.orElseThrow(), more, desk().origin())))
                .ifPresent(kit -> {
                    told().done("Added", Words.count(more.size(), "line", "lines") + " to " + kit.id()
                            + ". Choose the heats, then release.");
                    showLines();
                });
    }

    private void release(List<LineChoice> open) {
        List<ReleaseOrder> orders = open.stream().flatMap(line -> line.order(chosen.orElseThrow()).stream()).toList();
        if (orders.isEmpty()) {
            told().refused("No heat chosen", "No line has a heat yet.", "Choose a heat for the lines to release.");
            return;
        }
        told().outcome(() -> releases.release(desk().actor(), orders)).ifPresent(made -> {
            told().done("Released", Words.count(made.size(), "traveller", "travellers")
                    + ". Print the labels and put them on.");
            showLines();
            showReleased(made);
        });
    }

    private void showReleased(List<Traveller> made) {
        released.removeAll();
        released.add(Forms.panel("4. Labels", new DeskTable<Traveller>("Released now", "Nothing was released.")
                        .cell("Label", one -> Links.to("board/traveller/" + one.id(), OwnLabel.of(one.id()).printed()))
                        .text("Part", one -> one.part().partNumber() + ", " + one.part().description())
                        .text("Pieces", one -> String.valueOf(one.pieces().size()))
                        .text("Heat", one -> one.heat().value()).show(made),
                Forms.row(Files.pdf("Print traveller labels", "travellers.pdf", () -> printer.pages(made.stream()
                        .map(one -> LabelTexts.of(one, desk().isDemo())).toList())))));
    }
}
