package brightseam.ui.baths;

import brightseam.kernel.StationId;
import brightseam.line.Bath;
import brightseam.line.BathCommand;
import brightseam.line.Liquid;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.people.Signer;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Optional;

/** Registers the bath of a tank, or changes its limits and intervals. */
@Route("baths/:station/limits")
@PageTitle("Limits of a bath")
@RolesAllowed("PROCESS_CONTROL")
class LimitsView extends DeskPage implements BeforeEnterObserver {

    private final Baths baths;
    private final Stations stations;

    LimitsView(Desk desk, Baths baths, Stations stations) {
        super(desk, "Limits of a bath");
        this.baths = baths;
        this.stations = stations;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        Optional<Station> station = label(entering, "station", StationId::new).flatMap(stations::find)
                .map(found -> found.state());
        if (station.isEmpty()) {
            head("No such tank", "No station of this shop has that label.");
            show(Links.to("baths", "Back to the baths"));
            return;
        }
        StationId id = station.get().id();
        Optional<Bath> bath = baths.find(id).map(found -> found.state());
        head((bath.isPresent() ? "Limits of " : "Register the bath of ") + id + " " + station.get().title(),
                "The shop's own specification and the drawing go before every value entered here.");
        LimitFields fields = new LimitFields(bath.map(Bath::terms));
        show(Forms.panel("Limits and intervals", fields),
                bath.isPresent() ? changing(bath.get(), fields) : registering(id, fields),
                Forms.row(Links.to(bath.isPresent() ? "baths/" + id : "baths", "Back")));
    }

    private Component registering(StationId id, LimitFields fields) {
        Select<Liquid> liquid = new Select<>();
        liquid.setLabel("Liquid");
        liquid.setItems(Liquid.values());
        liquid.setItemLabelGenerator(BathWords::liquid);
        TextField volume = new TextField("Volume, L");
        TextField baskets = new TextField("Baskets at once");
        PasswordField pin = Forms.pin("Your PIN");
        return Forms.panel("Tank", Forms.row(liquid, volume, baskets), Forms.row(pin, Forms.act("Register and sign",
                () -> told().signer(pin).ifPresent(signer -> done("Registered", id,
                        () -> new BathCommand.RegisterBath(id, liquid.getOptionalValue().orElseThrow(
                                () -> new IllegalArgumentException("liquid: choose one")),
                                Numbers.decimal("volume", volume.getValue()),
                                Numbers.whole("baskets at once", baskets.getValue()), fields.terms(),
                                desk().origin(), signer))))));
    }

    private Component changing(Bath bath, LimitFields fields) {
        TextField reason = new TextField("Reason for the change");
        reason.setMaxLength(200);
        PasswordField pin = Forms.pin("Your PIN");
        Div row = Forms.row(reason, pin, Forms.act("Change and sign", () -> told().signer(pin).ifPresent(
                (Signer signer) -> done("Changed", bath.station(), () -> new BathCommand.ChangeTerms(
                        bath.station(), fields.terms(), reason.getValue(), desk().origin(), signer)))));
        return Forms.panel("Sign", Forms.note("They count for the last analysis at once; what an analysis locked stays"
                + " locked until a good one comes."), row);
    }

    private void done(String word, StationId id, java.util.function.Supplier<BathCommand> command) {
        told().guarded(() -> told().outcome(() -> baths.execute(command.get()))).ifPresent(bath ->
                told().done(word, "The bath of " + id + " has these limits now. The list shows how it stands."));
    }
}
