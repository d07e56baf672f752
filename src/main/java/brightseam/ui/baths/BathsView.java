package brightseam.ui.baths;

import brightseam.line.Bath;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.people.Role;
import brightseam.procedure.StepKind;
import brightseam.procedure.Vocabulary;
import brightseam.traveller.shell.ProcessControl;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Pulse;
import brightseam.ui.parts.Changes;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Duration;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every tank: whether it is fit, when it is analysed next, what hangs in it. */
@Route("baths")
@PageTitle("Baths")
@RolesAllowed({"LEAD", "INSPECTOR", "PROCESS_CONTROL"})
class BathsView extends DeskPage {

    private static final Set<StepKind> WET = EnumSet.of(StepKind.SOAK, StepKind.RINSE, StepKind.DRY);
    private static final Set<String> SHOWN = Set.of("bath", "station", "traveller");

    private final Baths baths;
    private final Stations stations;
    private final ProcessControl control;
    private final Vocabulary vocabulary;
    private final DeskTable<TankLine> table = new DeskTable<TankLine>("Every tank and dryer",
            "No tank is registered. An administrator or lead registers stations in the shop's registers.")
            .cell("Tank", BathsView::tank)
            .cell("State", BathsView::state)
            .text("In it now", TankLine::inside)
            .act("Do", this::ways);

    BathsView(Desk desk, Baths baths, Stations stations, ProcessControl control, Vocabulary vocabulary,
            Changes changes, Pulse pulse) {
        super(desk, "Baths");
        this.baths = baths;
        this.stations = stations;
        this.control = control;
        this.vocabulary = vocabulary;
        show(Forms.panel("Tanks", table));
        refresh();
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> SHOWN.contains(stream.family()))) {
                refresh();
            }
        });
        pulse.every(this, Duration.ofSeconds(30), this::refresh);
    }

    private void refresh() {
        List<TankLine> lines = stations.all().stream().filter(this::isWet).map(this::line).toList();
        long stopped = lines.stream().filter(TankLine::stops).count();
        head("Baths", stopped == 0 ? "Nothing stands against any bath."
                : stopped == 1 ? "One tank takes nothing in now." : stopped + " tanks take nothing in now.");
        table.show(lines);
    }

    private boolean isWet(Station station) {
        Vocabulary.StationClass known = vocabulary.stations().get(station.stationClass());
        return known != null && !Collections.disjoint(known.kinds(), WET);
    }

    private TankLine line(Station station) {
        Optional<Bath> bath = baths.find(station.id()).map(found -> found.state());
        return TankLine.of(station, bath, control.inside(station.id()), desk().now(), desk().wording(),
                desk().zone());
    }

    private static Component tank(TankLine line) {
        Div cell = new Div(line.liquid().isEmpty() ? new Span(line.station().value())
                : Links.to("baths/" + line.station(), line.station().value()));
        cell.add(new Div(new Span(line.title())));
        cell.getElement().setAttribute("data-tank", line.station().value());
        return cell;
    }

    private static Component state(TankLine line) {
        Span word = new Span(line.state());
        word.addClassName(line.stops() ? "bath-stopped" : "bath-state");
        Div cell = new Div(word, new Div(new Span(line.detail())));
        cell.addClassName("bath-cell");
        return cell;
    }

    private Component ways(TankLine line) {
        Div ways = new Div();
        ways.addClassName("cell-actions");
        if (desk().holds(Role.PROCESS_CONTROL)) {
            String path = "baths/" + line.station();
            if (line.liquid().isEmpty()) {
                ways.add(named(path + "/limits", "Register its bath", line));
            } else if (line.analysed()) {
                ways.add(named(path + "/sample", "Enter an analysis", line));
            }
        }
        return ways;
    }

    private static Component named(String path, String words, TankLine line) {
        var link = Links.to(path, words);
        link.getElement().setAttribute("aria-label", words + ", " + line.station());
        return link;
    }
}
