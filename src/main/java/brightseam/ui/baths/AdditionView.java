package brightseam.ui.baths;

import brightseam.kernel.StationId;
import brightseam.line.Bath;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.procedure.Vocabulary;
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

/** Works out what a bath needs and records what was added to it, or that it was filled anew. */
@Route("baths/:station/addition")
@PageTitle("Add to a bath")
@RolesAllowed("PROCESS_CONTROL")
class AdditionView extends DeskPage implements BeforeEnterObserver {

    private final Baths baths;
    private final Stations stations;
    private final Vocabulary vocabulary;

    AdditionView(Desk desk, Baths baths, Stations stations, Vocabulary vocabulary) {
        super(desk, "Add to a bath");
        this.baths = baths;
        this.stations = stations;
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
        head("Add to " + station.get().id() + " " + station.get().title(), "Fill " + bath.get().fill().number()
                + bath.get().lastAnalysis().map(last -> ", last sample " + last.sample()).orElse(", never analysed")
                + ".");
        AdditionForm form = new AdditionForm(desk(), told(), baths, bath.get());
        show(Cautions.of(vocabulary, station.get()),
                Forms.panel("What it needs", form.sheet()),
                Forms.panel("Record what was added", form),
                Forms.panel("Emptied and filled anew", new FillForm(desk(), told(), baths, bath.get(),
                        form::workings)),
                Forms.row(Links.to("baths/" + station.get().id(), "Back to the bath")));
    }
}
