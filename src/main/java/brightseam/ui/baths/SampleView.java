package brightseam.ui.baths;

import brightseam.kernel.StationId;
import brightseam.line.Bath;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.procedure.Vocabulary;
import brightseam.traveller.shell.ProcessControl;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Optional;

/** Enters an analysis of one bath: readings, how the values follow from them, signature. */
@Route("baths/:station/sample")
@PageTitle("Enter an analysis")
@RolesAllowed("PROCESS_CONTROL")
class SampleView extends DeskPage implements BeforeEnterObserver {

    private final Baths baths;
    private final Stations stations;
    private final ProcessControl control;
    private final Vocabulary vocabulary;

    SampleView(Desk desk, Baths baths, Stations stations, ProcessControl control, Vocabulary vocabulary) {
        super(desk, "Enter an analysis");
        this.baths = baths;
        this.stations = stations;
        this.control = control;
        this.vocabulary = vocabulary;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        Optional<StationId> id = label(entering, "station", StationId::new);
        Optional<Bath> bath = id.flatMap(baths::find).map(found -> found.state());
        Optional<Station> station = id.flatMap(stations::find).map(found -> found.state());
        if (bath.isEmpty() || station.isEmpty()) {
            head("No such bath", "No tank of this shop with a registered bath has that label.");
            show(Links.to("baths", "Back to the baths"));
            return;
        }
        head("Analysis of " + station.get().id() + " " + station.get().title(), bath.get().isAnalysed()
                ? "Fill " + bath.get().fill().number() + ". Everything with a limit is entered together."
                : "This bath has no limits, so it is not analysed.");
        show(Cautions.of(vocabulary, station.get()),
                Forms.panel("Sample and readings", bath.get().isAnalysed()
                        ? new SampleForm(desk(), told(), control, bath.get())
                        : Forms.note("Set limits first: the page of the bath leads there.")),
                Forms.row(Links.to("baths/" + station.get().id(), "Back to the bath")));
    }
}
