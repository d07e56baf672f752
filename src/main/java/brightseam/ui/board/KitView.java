package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.KitCommand;
import brightseam.kit.KitLine;
import brightseam.kit.shell.Kits;
import brightseam.people.Role;
import brightseam.scan.shell.LabelPrinter;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.LabelTexts;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.TwoPresses;
import brightseam.ui.parts.Changes;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One kit: whether it can go in, its travellers, its parts list, its session. */
@Route("board/kit/:id")
@PageTitle("Kit")
@RolesAllowed({"LEAD", "INSPECTOR", "ADMINISTRATOR"})
class KitView extends DeskPage implements BeforeEnterObserver {

    private static final Set<String> SHOWN = Set.of("traveller", "kit");

    private final Kits kits;
    private final Travellers travellers;
    private final LabelPrinter printer;
    private final Div standing = new Div();
    private final Div session = new Div();
    private Optional<KitId> id = Optional.empty();

    KitView(Desk desk, Kits kits, Travellers travellers, LabelPrinter printer, Changes changes) {
        super(desk, "Kit");
        this.kits = kits;
        this.travellers = travellers;
        this.printer = printer;
        show(standing, session);
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> SHOWN.contains(stream.family()))) {
                refreshStanding();
            }
        });
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        id = label(entering, "id", KitId::new);
        refreshStanding();
        refreshSession();
    }

    private Optional<Kit> kit() {
        return id.flatMap(kits::find).map(found -> found.state());
    }

    private void refreshStanding() {
        standing.removeAll();
        kit().ifPresentOrElse(this::showStanding, () -> {
            head("No such kit", "No kit of this shop has that label.");
            standing.add(Links.to("board", "Back to the board"));
        });
    }

    private void showStanding(Kit kit) {
        List<Card> cards = travellers.ofKit(kit.id());
        head(kit.id() + " " + kit.title(), "Session due: " + KitForms.words(kit, desk())
                + (kit.closed() ? ". The kit is closed." : "."));
        UnorderedList one = new UnorderedList(
                new KitLineItem(KitStanding.of(kit, cards, desk().now()), desk().speed()));
        one.addClassName("board-kits");
        UnorderedList rows = new UnorderedList();
        rows.addClassName("board-lines");
        List<BoardRow> own = BoardModel.rows(cards, List.of(kit), desk().now());
        own.forEach(row -> rows.add(new RowLine(row, desk().speed())));
        standing.add(Forms.panel("Can it go in?", one));
        if (desk().holds(Role.LEAD)) {
            standing.add(Forms.row(Links.to("board/kit/" + kit.id() + "/weld-map", "Weld map of this kit")));
        }
        standing.add(Forms.panel("Its travellers", own.isEmpty()
                ? Forms.note("No traveller of this kit is on its way. Release its lines (Release).") : rows));
        standing.add(Forms.panel("Parts list", lines(cards.stream().map(Card::traveller).toList(), kit),
                Forms.row(Files.pdf("Print the kit's card", kit.id() + "-label.pdf",
                        () -> printer.pages(List.of(LabelTexts.of(kit, desk().isDemo())))))));
    }

    private static DeskTable<KitLine> lines(List<Traveller> own, Kit kit) {
        List<KitLine> open = KitLines.unreleased(kit, own);
        return new DeskTable<KitLine>("What the kit needs", "The parts list is empty. Add lines on the release page.")
                .text("Line", line -> String.valueOf(line.lineNumber()))
                .text("Part", line -> line.partNumber() + " rev " + line.drawingRevision())
                .text("Description", KitLine::description)
                .text("Pieces", line -> String.valueOf(line.quantity()))
                .text("Procedure", KitLine::procedure)
                .text("Released", line -> open.contains(line) ? "not yet" : "yes").show(kit.lines());
    }

    private void refreshSession() {
        session.removeAll();
        kit().filter(kit -> !kit.closed() && desk().holds(Role.LEAD)).ifPresent(kit -> session.add(
                Forms.panel("Chamber session", KitForms.session(desk(), told(), kits, kit, this::refreshStanding)),
                Forms.panel("Close the kit", Forms.note("When its session is over, or will not be. A closed kit no"
                                + " longer changes; its travellers go on."),
                        TwoPresses.forGood("Close kit", kit.id().value(), () -> close(kit)))));
    }

    private void close(Kit kit) {
        told().outcome(() -> kits.execute(new KitCommand.CloseKit(kit.id(), desk().origin()))).ifPresent(closed -> {
            told().done("Closed", kit.id() + " no longer changes.");
            refreshStanding();
            refreshSession();
        });
    }
}
