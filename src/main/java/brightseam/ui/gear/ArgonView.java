package brightseam.ui.gear;

import brightseam.chamber.ArgonCommand;
import brightseam.chamber.shell.ArgonUse;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Role;
import brightseam.procedure.Vocabulary;
import brightseam.scan.OwnLabel;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Pulse;
import brightseam.ui.desk.TwoPresses;
import brightseam.ui.entry.Frames;
import brightseam.ui.entry.Scans;
import brightseam.ui.parts.CautionList;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.ScanInput;
import brightseam.ui.parts.Scanned;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is left of the argon, how long it lasts, change-over, readings, and what sessions used. */
@Route("argon")
@PageTitle("Argon")
@RolesAllowed({"FABRICATOR", "LEAD", "PROCESS_CONTROL"})
@StyleSheet("context://frontend/gear.css")
class ArgonView extends DeskPage {

    private static final Set<String> SHOWN = Set.of("argon", "chamber", "supply", "kit", "session");
    private static final List<String> CAUTIONS = List.of("gas-cylinders", "argon-in-pits", "argon-and-air");
    private static final int USES_SHOWN = 30;

    private final ArgonDesk argon;
    private final Vocabulary vocabulary;
    private final ScanInput scans;
    private final List<ChamberPart> parts = new ArrayList<>();
    private List<List<String>> shownSources = List.of();
    private Optional<ReadingForm> reading = Optional.empty();

    ArgonView(Desk desk, ArgonDesk argon, Vocabulary vocabulary, Frames frames, Changes changes, Pulse pulse) {
        super(desk, "Argon");
        this.argon = argon;
        this.vocabulary = vocabulary;
        this.scans = frames.scans();
        scans.addScanListener(this::scanned);
        refresh();
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> SHOWN.contains(stream.family()))) {
                refresh();
            }
        });
        pulse.every(this, Duration.ofSeconds(30), this::refresh);
    }

    private void refresh() {
        List<ArgonBoard> boards = argon.boards(desk());
        List<List<String>> sources = boards.stream().map(board -> board.sources().stream()
                .map(line -> line.supply() + line.placeWord()).toList()).toList();
        if (parts.isEmpty() || !sources.equals(shownSources)) {
            build(boards);
            shownSources = sources;
        }
        for (int i = 0; i < parts.size(); i++) {
            parts.get(i).show(boards.get(i));
        }
        head("Argon", boards.isEmpty() ? "No chamber is registered yet." : "");
    }

    private void build(List<ArgonBoard> boards) {
        parts.clear();
        List<Component> all = new ArrayList<>();
        all.add(new Div(Forms.note("Scan the label of a source. m³ are gas at 15 °C and one atmosphere, and what can be"
                + " drawn leaves in each source what has to stay."), scans));
        if (boards.isEmpty()) {
            all.add(Forms.note("Process control or a lead registers the chamber in the shop's registers."));
        }
        boards.forEach(board -> {
            ChamberPart part = new ChamberPart(board, boards.size() > 1);
            parts.add(part);
            all.addAll(part.panels());
        });
        ReadingForm form = new ReadingForm(desk(), told(), argon, this::refresh);
        reading = Optional.of(form);
        all.add(Forms.panel("Read a source", form));
        boards.forEach(board -> all.add(used(board)));
        show(all.toArray(Component[]::new));
    }

    private Component used(ArgonBoard board) {
        List<ArgonUse> uses = argon.chambers().used(board.station(), USES_SHOWN);
        DeskTable<UsedLine> table = new DeskTable<UsedLine>("Latest first",
                "No session's argon was counted yet. It is counted when a session ends.")
                .text("Session", UsedLine::session)
                .text("Counted", UsedLine::counted)
                .text("Forecast", UsedLine::forecast)
                .text("By pressure and level", UsedLine::byContent)
                .text("By flow", UsedLine::byFlow)
                .text("Against the forecast", UsedLine::difference)
                .text("From", UsedLine::sources)
                .show(uses.stream().map(use -> UsedLine.of(use, desk().zone())).toList());
        return Forms.panel("What sessions used in " + board.station(), table.file(() -> UsedLine.csv(
                argon.chambers().used(board.station(), Integer.MAX_VALUE))));
    }

    private void scanned(Scanned scan) {
        Optional<SupplyId> label = Scans.read(scan, desk().now()) instanceof OwnLabel own
                ? own.supply() : Optional.empty();
        Optional<SourceLine> line = label.flatMap(id -> parts.stream().flatMap(part -> part.line(id).stream())
                .min(java.util.Comparator.comparing(SourceLine::place)));
        if (line.isEmpty()) {
            told().refused("No argon here", label.map(id -> id + " is no source of argon that is in use.")
                    .orElse("This is not the label of a source of argon."), "Scan the label of a cylinder, bundle or"
                    + " dewar, or enter its delivery.");
            return;
        }
        reading.ifPresent(form -> form.scanned(line.get().supply()));
        boolean taken = parts.stream().filter(part -> part.line(line.get().supply()).filter(line.get()::equals)
                .isPresent()).findFirst().filter(part -> part.form.scanned(line.get())).isPresent();
        if (taken) {
            told().done(line.get().supply().value(), line.get().placeWord() + ": " + line.get().amount() + ".");
        }
    }

    /** What the page shows of one chamber. */
    private final class ChamberPart {
        private final Figures figures = new Figures();
        private final SourceBars bars = new SourceBars();
        private final ChangeOverForm form;
        private final StationId station;
        private final String heading;
        private final DeskTable<ForecastLine> sessions = new DeskTable<ForecastLine>("By their beginning",
                "No session is due. Give a kit the time of its session on its page.")
                .cell("Session", line -> twoLines(line.what(), line.title()))
                .text("Begins", ForecastLine::begins)
                .cell("Takes", line -> twoLines(line.takes(), line.parts()))
                .text("Change over at", ForecastLine::changeOver)
                .text("Left afterwards", ForecastLine::left)
                .cell("Argon", ArgonView::verdict);
        private List<SourceLine> lines = List.of();

        ChamberPart(ArgonBoard board, boolean several) {
            this.station = board.station();
            this.heading = several ? " for " + board.station() + " " + board.title() : "";
            this.form = new ChangeOverForm(desk(), told(), argon, board, ArgonView.this::refresh);
        }

        List<Component> panels() {
            Component more = desk().holds(Role.LEAD, Role.PROCESS_CONTROL)
                    ? Forms.row(Links.to("argon/delivery", "Enter a delivery")) : new Div();
            return List.of(Forms.panel("What is left" + heading, figures, bars, more),
                    Forms.panel("Sessions to come" + heading, sessions),
                    Forms.panel("Before you touch a cylinder", CautionList.of(CAUTIONS.stream()
                            .map(vocabulary.cautions()::get).toList(), vocabulary.safetyNotice())),
                    Forms.panel("Change over" + heading, form));
        }

        void show(ArgonBoard board) {
            lines = board.sources();
            figures.show(board);
            bars.show(lines, ArgonView.this::actions);
            sessions.show(board.sessions());
        }

        Optional<SourceLine> line(SupplyId supply) {
            return lines.stream().filter(line -> line.supply().equals(supply)).findFirst();
        }
    }

    private Component actions(SourceLine line) {
        Div actions = new Div();
        actions.addClassName("cell-actions");
        if (line.place() != SourceLine.Place.FEEDS && desk().holds(Role.LEAD, Role.PROCESS_CONTROL)) {
            actions.add(TwoPresses.forGood("Empty", line.supply().value(), () -> run("Empty",
                            new ArgonCommand.DeclareEmpty(line.supply(), desk().origin()))),
                    TwoPresses.withReason("Retire", line.supply().value(), reason -> told().guarded(() -> {
                        run("Retired", new ArgonCommand.Retire(line.supply(), reason, desk().origin()));
                        return Optional.empty();
                    })));
        }
        return actions;
    }

    private void run(String word, ArgonCommand command) {
        told().outcome(() -> argon.store().execute(command)).ifPresent(after -> {
            told().done(word, after.id() + " is not counted any more.");
            refresh();
        });
    }

    private static Component twoLines(String first, String second) {
        Span strong = new Span(first);
        strong.addClassName("gear-state");
        Div cell = new Div(strong, new Div(new Span(second)));
        cell.addClassName("gear-cell");
        return cell;
    }

    private static Component verdict(ForecastLine line) {
        Div word = new Div();
        word.setText(line.verdict());
        word.addClassName(line.enough() ? "gear-state" : "gear-stopped");
        return word;
    }
}
