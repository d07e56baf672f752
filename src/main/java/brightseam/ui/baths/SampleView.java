package brightseam.ui.baths;

import brightseam.line.Bath;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.procedure.Vocabulary;
import brightseam.traveller.shell.ProcessControl;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;

/** Enters an analysis of one bath: readings, how the values follow from them, signature. */
@Route("baths/:station/sample")
@PageTitle("Enter an analysis")
@RolesAllowed("PROCESS_CONTROL")
class SampleView extends BathPage {

    private final ProcessControl control;
    private final Vocabulary vocabulary;

    SampleView(Desk desk, Baths baths, Stations stations, ProcessControl control, Vocabulary vocabulary) {
        super(desk, "Enter an analysis", baths, stations);
        this.control = control;
        this.vocabulary = vocabulary;
    }

    @Override
    void open(Station station, Bath bath) {
        head("Analysis of " + station.id() + " " + station.title(), bath.isAnalysed()
                ? "Fill " + bath.fill().number() + ". Everything with a limit is entered together."
                : "This bath has no limits, so it is not analysed.");
        show(Cautions.of(vocabulary, station),
                Forms.panel("Sample and readings", bath.isAnalysed()
                        ? new SampleForm(desk(), told(), control, bath)
                        : Forms.note("Set limits first: the page of the bath leads there.")),
                Forms.row(Links.to("baths/" + station.id(), "Back to the bath")));
    }
}
