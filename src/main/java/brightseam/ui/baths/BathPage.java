package brightseam.ui.baths;

import brightseam.kernel.StationId;
import brightseam.line.Bath;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Links;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import java.util.Optional;

/** A page where something is done to one bath, whose tank the address names. */
abstract class BathPage extends DeskPage implements BeforeEnterObserver {

    private final Baths baths;
    private final Stations stations;

    BathPage(Desk desk, String title, Baths baths, Stations stations) {
        super(desk, title);
        this.baths = baths;
        this.stations = stations;
    }

    @Override
    public final void beforeEnter(BeforeEnterEvent entering) {
        Optional<StationId> id = label(entering, "station", StationId::new);
        Optional<Bath> bath = id.flatMap(baths::find).map(found -> found.state());
        Optional<Station> station = id.flatMap(stations::find).map(found -> found.state());
        if (bath.isEmpty() || station.isEmpty()) {
            head("No such bath", "No tank of this shop with a registered bath has that label.");
            show(Links.to("baths", "Back to the baths"));
            return;
        }
        open(station.get(), bath.get());
    }

    /** Shows the page for {@code bath}, which is in {@code station}. */
    abstract void open(Station station, Bath bath);

    /** Where what is entered here is stored. */
    final Baths baths() {
        return baths;
    }
}
