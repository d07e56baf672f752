package brightseam.ui.admin;

import brightseam.kernel.StationId;
import brightseam.line.Station;
import brightseam.line.StationCommand;
import brightseam.line.shell.Stations;
import brightseam.procedure.Vocabulary;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.TwoPresses;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;

/** The stations of the shop. */
@Route("shop/stations")
@PageTitle("Stations")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class StationsView extends DeskPage {

    private final Stations stations;
    private final Vocabulary vocabulary;
    private final DeskTable<Station> table = new DeskTable<Station>("Every station, those out of use too",
            "No station is registered. Register one for every class that a procedure names, above.")
            .text("Station", station -> station.id().value())
            .text("What it is", station -> station.title() + " (" + className(station.stationClass()) + ")"
                    + (station.needsQualification() ? "; qualification asked for" : ""))
            .text("State", station -> station.outOfUseReason().map(why -> "OUT OF USE: " + why).orElse("in use"))
            .act("Actions", this::actions);

    StationsView(Desk desk, Stations stations, Vocabulary vocabulary) {
        super(desk, "Stations");
        this.stations = stations;
        this.vocabulary = vocabulary;
        show(Forms.panel("Register a station", registration()),
                Forms.panel("All stations", table, Forms.row(Links.to("shop/labels", "Print labels"))));
        table.show(stations.all());
    }

    private String className(String key) {
        Vocabulary.StationClass known = vocabulary.stations().get(key);
        return known == null ? key : known.name();
    }

    private Div registration() {
        TextField label = Forms.text("Label", "begins with S-, such as S-ACID-1");
        TextField title = Forms.text("Title", "such as Pickle tank 1");
        Select<String> stationClass = new Select<>();
        stationClass.setLabel("Class");
        stationClass.setItems(vocabulary.stations().keySet().stream().sorted().toList());
        stationClass.setItemLabelGenerator(this::className);
        Checkbox qualification = new Checkbox("Only people qualified for its class may sign here");
        return Forms.row(label, title, stationClass, qualification, Forms.act("Register", () ->
                told().guarded(() -> told().outcome(() -> stations.execute(new StationCommand.RegisterStation(
                        stationLabel(label.getValue()), stationClass.getOptionalValue().orElse(""), title.getValue(),
                        qualification.getValue(), desk().origin())))).ifPresent(station -> {
                            told().done("Registered", station.id() + " " + station.title() + ". Print its label.");
                            label.clear();
                            title.clear();
                            table.show(stations.all());
                        })));
    }

    private Component actions(Station station) {
        if (station.isOutOfUse()) {
            return Forms.button("Put back into use", () -> run("Put back",
                    () -> new StationCommand.PutBackIntoUse(station.id(), desk().origin())));
        }
        return TwoPresses.withReason("Take out of use", station.id().value(), reason -> run("Out of use",
                () -> new StationCommand.TakeOutOfUse(station.id(), reason, desk().origin())));
    }

    private void run(String word, java.util.function.Supplier<StationCommand> command) {
        told().guarded(() -> told().outcome(() -> stations.execute(command.get()))).ifPresent(after -> {
            told().done(word, after.id() + " " + after.title() + ".");
            table.show(stations.all());
        });
    }

    private static StationId stationLabel(String text) {
        if (!text.strip().startsWith("S-")) {
            throw new IllegalArgumentException("station label: begins with S-");
        }
        return new StationId(text.strip());
    }
}
