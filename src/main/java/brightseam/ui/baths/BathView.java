package brightseam.ui.baths;

import brightseam.kernel.StationId;
import brightseam.line.Bath;
import brightseam.line.BathDeed;
import brightseam.line.Liquid;
import brightseam.line.SampleLine;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.people.Role;
import brightseam.traveller.shell.ProcessControl;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.Chart;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One bath: how it stands, its numbers against its limits, trends, what was done to it, and its locks. */
@Route("baths/:station")
@PageTitle("Bath")
@RolesAllowed({"LEAD", "INSPECTOR", "PROCESS_CONTROL"})
class BathView extends DeskPage implements BeforeEnterObserver {

    private static final Set<String> SHOWN = Set.of("bath", "station", "traveller");
    private static final int SAMPLES_SHOWN = 60;
    private static final int SAMPLES_KEPT = 100_000;
    private static final int DEEDS_SHOWN = 60;

    private final Baths baths;
    private final Stations stations;
    private final ProcessControl control;
    private final Div standing = new Div();
    private final Div deciding = new Div();
    private final Div history = new Div();
    private Optional<StationId> id = Optional.empty();

    BathView(Desk desk, Baths baths, Stations stations, ProcessControl control, Changes changes) {
        super(desk, "Bath");
        this.baths = baths;
        this.stations = stations;
        this.control = control;
        show(standing, deciding, history);
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> SHOWN.contains(stream.family()))) {
                refresh();
            }
        });
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        id = label(entering, "station", StationId::new);
        refresh();
        decide();
    }

    private Optional<Bath> bath() {
        return id.flatMap(baths::find).map(found -> found.state());
    }

    private void refresh() {
        standing.removeAll();
        history.removeAll();
        bath().ifPresentOrElse(this::refresh, () -> {
            head("No such bath", "No tank of this shop with a registered bath has that label.");
            standing.add(Links.to("baths", "Back to the baths"));
        });
    }

    private void refresh(Bath bath) {
        Station station = stations.find(bath.station()).map(found -> found.state()).orElseThrow();
        TankLine line = TankLine.of(station, Optional.of(bath), control.inside(bath.station()), desk().now(),
                desk().wording(), desk().zone());
        head(bath.station() + " " + station.title(), line.state() + ". " + line.detail());
        List<SampleLine> samples = baths.samples(bath.station(), SAMPLES_SHOWN);
        List<BathDeed> deeds = baths.deeds(bath.station(), DEEDS_SHOWN);
        standing.add(Forms.panel("How it stands", facts(bath), ways(bath)));
        standing.add(Forms.panel("Last analysis against the limits", numbers(bath)));
        history.add(Forms.panel("Trends", trends(samples, deeds, bath)));
        history.add(Forms.panel("Analyses", Histories.samples(samples, desk().zone(),
                () -> baths.samples(bath.station(), SAMPLES_KEPT))));
        history.add(Forms.panel("What was done", Histories.deeds(deeds, desk().zone(),
                () -> baths.deeds(bath.station(), Integer.MAX_VALUE))));
    }

    private Component facts(Bath bath) {
        return new DeskTable<BathFacts.Fact>("What is known now", "")
                .text("What", BathFacts.Fact::name).text("How", BathFacts.Fact::words)
                .show(BathFacts.of(bath, control.inside(bath.station()), control.suspects(bath.station()).size(),
                        desk().now(), desk().zone()));
    }

    private Component ways(Bath bath) {
        String path = "baths/" + bath.station();
        Div ways = Forms.row(Links.to("baths", "All baths"));
        if (desk().holds(Role.PROCESS_CONTROL)) {
            ways.add(Links.to(path + "/sample", "Enter an analysis"), Links.to(path + "/addition",
                    "Add to it or fill it anew"), Links.to(path + "/limits", "Change limits"));
        }
        return ways;
    }

    private static Component numbers(Bath bath) {
        return new DeskTable<BathFacts.Measured>(
                bath.lastAnalysis().map(last -> "Sample " + last.sample() + ", " + last.method())
                        .orElse("No sample of this fill"),
                "This bath has no limits, so it is not analysed.")
                .text("Quantity", row -> BathWords.quantity(row.quantity()))
                .text("Measured", row -> row.value().map(value -> BathWords.value(row.quantity(), value)).orElse("–"))
                .text("Allowed", BathFacts.Measured::limits)
                .text("Verdict", BathFacts.Measured::verdict).show(BathFacts.measured(bath));
    }

    private Component trends(List<SampleLine> samples, List<BathDeed> deeds, Bath bath) {
        if (samples.isEmpty()) {
            return Forms.note(bath.isAnalysed() ? "No analysis yet. Take a sample and enter it; the trends begin then."
                    : "This bath is not analysed.");
        }
        Div all = new Div(Forms.note("A filled mark lay inside the limits of its day, a hollow one outside. The thick"
                + " lines are the limits of today; broken lines are fills and additions."));
        Trends.of(samples, deeds, bath.terms(), desk().zone()).forEach(trend -> all.add(new Chart(trend)));
        all.addClassName("bath-trends");
        return all;
    }

    /** The forms keep what was keyed into them: they are made anew only when this page did something. */
    private void decide() {
        deciding.removeAll();
        bath().ifPresent(bath -> {
            if (desk().holds(Role.PROCESS_CONTROL, Role.LEAD)) {
                deciding.add(new LockForms(desk(), told(), baths, control, bath, this::decide));
            }
            if (bath.liquid() == Liquid.PICKLING_ACID) {
                deciding.add(Forms.panel("How long it lasts", new LifeForm(told(), bath)));
                deciding.add(Forms.panel("How long to soak, by a coupon", new SoakForm(told())));
            }
        });
    }
}
