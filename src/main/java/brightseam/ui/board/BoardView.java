package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.kit.Kit;
import brightseam.kit.shell.Kits;
import brightseam.ledger.StreamName;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Pulse;
import brightseam.ui.parts.Changes;
import brightseam.words.Words;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The board: every traveller that has not ended, in words, what runs out first at the top. */
@Route("board")
@PageTitle("Board")
@RolesAllowed({"LEAD", "INSPECTOR", "ADMINISTRATOR"})
class BoardView extends DeskPage {

    /** The order is looked at anew this often, in shop time; the countdowns themselves run in the page. */
    private static final Duration LOOK = Duration.ofSeconds(15);

    private final BoardBook book;
    private final Select<String> kit = new Select<>();
    private final Checkbox hurrying = new Checkbox("Only what hurries (within 1 h, run out, or stopped)");
    private final UnorderedList kitList = new UnorderedList();
    private final UnorderedList lines = new UnorderedList();
    private final Paragraph empty = Forms.note("");
    private final Map<TravellerId, RowLine> known = new HashMap<>();
    private List<KitStanding> kitsShown = List.of();

    BoardView(Desk desk, Travellers travellers, Kits kits, Changes changes, Pulse pulse) {
        super(desk, "Board");
        this.book = new BoardBook(travellers, kits);
        kit.setLabel("Kit");
        kit.setEmptySelectionAllowed(true);
        kit.setEmptySelectionCaption("Every kit");
        kit.setPlaceholder("Every kit");
        kit.addValueChangeListener(chosen -> refresh());
        hurrying.addValueChangeListener(chosen -> refresh());
        kitList.addClassName("board-kits");
        lines.addClassName("board-lines");
        empty.addClassName("desk-empty");
        Div filters = Forms.row(kit, hurrying,
                Files.csv("Save this list as CSV", "board.csv", () -> BoardModel.csv(filtered(book.rows(desk.now())))));
        show(Forms.panel("Kits", kitList, Files.csv("Save the kits as CSV", "kits.csv",
                () -> BoardModel.kitsCsv(book.kits(desk.now())))), Forms.panel("Travellers", filters, empty, lines));
        changes.follow(this, this::grown);
        addAttachListener(attached -> {
            book.readAll();
            refresh();
        });
        pulse.every(this, period(desk.speed()), this::refresh);
    }

    private static Duration period(double speed) {
        return Duration.ofMillis(Math.clamp((long) (LOOK.toMillis() / speed), 2_000, LOOK.toMillis()));
    }

    private void grown(Set<StreamName> streams) {
        if (book.grown(streams)) {
            refresh();
        }
    }

    private List<BoardRow> filtered(List<BoardRow> all) {
        return all.stream()
                .filter(row -> kit.getOptionalValue().map(KitId::new).filter(id -> !id.equals(row.kit())).isEmpty())
                .filter(row -> !hurrying.getValue() || row.hurries()).toList();
    }

    private void refresh() {
        Moment now = desk().now();
        List<BoardRow> all = book.rows(now);
        List<BoardRow> rows = filtered(all);
        offerKits(all);
        showKits(book.kits(now));
        showRows(rows);
        long ready = all.stream().filter(row -> row.verdict().startsWith("Ready")).count();
        long stopped = all.stream().filter(BoardRow::stopped).count();
        head("Board", Words.count(all.size(), "traveller", "travellers") + " not ended, "
                + ready + " ready to pass in, "
                + stopped + " in quarantine.");
        empty.setVisible(rows.isEmpty());
        empty.setText(all.isEmpty() ? "No traveller is on its way. Release one from a kit's parts list (Release)."
                : "Nothing here is as you asked. Choose every kit, or untick what hurries.");
    }

    private void offerKits(List<BoardRow> all) {
        List<String> offered = Stream.concat(
                book.openKits().stream().map(Kit::id), all.stream().map(BoardRow::kit))
                .map(KitId::value).distinct().sorted().toList();
        if (!offered.equals(kit.getListDataView().getItems().toList())) {
            Optional<String> chosen = kit.getOptionalValue();
            kit.setItems(offered);
            chosen.filter(offered::contains).ifPresent(kit::setValue);
        }
    }

    private void showKits(List<KitStanding> kits) {
        List<KitStanding> words = kits.stream().map(KitStanding::withoutTime).toList();
        if (!kits.isEmpty() && words.equals(kitsShown)) {
            return;
        }
        kitsShown = words;
        kitList.removeAll();
        kits.forEach(standing -> kitList.add(new KitLineItem(standing, desk().speed())));
        if (kits.isEmpty()) {
            kitList.add(new ListItem(
                    Links.to("release", "No kit is open: open one and release its travellers.")));
        }
    }

    /** Lines stay where they are unless the order changed, so that what has the focus keeps it. */
    private void showRows(List<BoardRow> rows) {
        Set<TravellerId> wanted = rows.stream().map(BoardRow::id).collect(Collectors.toSet());
        known.entrySet().removeIf(line -> {
            boolean gone = !wanted.contains(line.getKey());
            if (gone) {
                lines.remove(line.getValue());
            }
            return gone;
        });
        for (int i = 0; i < rows.size(); i++) {
            BoardRow row = rows.get(i);
            RowLine line = known.get(row.id());
            if (line == null) {
                line = new RowLine(row, desk().speed());
                known.put(row.id(), line);
            } else {
                line.show(row, desk().speed());
            }
            if (i >= lines.getComponentCount() || lines.getComponentAt(i) != line) {
                lines.addComponentAtIndex(i, line);
            }
        }
    }
}
