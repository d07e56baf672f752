package brightseam.ui.baths;

import brightseam.line.Bath;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.procedure.Vocabulary;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;

/** Works out what a bath needs and records what was added to it, or that it was filled anew. */
@Route("baths/:station/addition")
@PageTitle("Add to a bath")
@RolesAllowed("PROCESS_CONTROL")
class AdditionView extends BathPage {

    private final Vocabulary vocabulary;

    AdditionView(Desk desk, Baths baths, Stations stations, Vocabulary vocabulary) {
        super(desk, "Add to a bath", baths, stations);
        this.vocabulary = vocabulary;
    }

    @Override
    void open(Station station, Bath bath) {
        head("Add to " + station.id() + " " + station.title(), "Fill " + bath.fill().number()
                + bath.lastAnalysis().map(last -> ", last sample " + last.sample()).orElse(", never analysed")
                + ".");
        AdditionForm form = new AdditionForm(desk(), told(), baths(), bath);
        show(Cautions.of(vocabulary, station),
                Forms.panel("What it needs", form.sheet()),
                Forms.panel("Record what was added", form),
                Forms.panel("Emptied and filled anew", new FillForm(desk(), told(), baths(), bath,
                        form::workings)),
                Forms.row(Links.to("baths/" + station.id(), "Back to the bath")));
    }
}
