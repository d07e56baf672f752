package brightseam.ui.gear;

import brightseam.chamber.Chamber;
import brightseam.chamber.ChamberCommand;
import brightseam.chamber.shell.Chambers;
import brightseam.kernel.StationId;
import brightseam.line.Station;
import brightseam.line.shell.Stations;
import brightseam.people.Signer;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Registers a chamber, changes its gear, limits and materials, enters a leak test; all of it signed. */
@Route("shop/chamber/:station")
@PageTitle("Gear of a chamber")
@RolesAllowed({"LEAD", "PROCESS_CONTROL"})
@StyleSheet("context://frontend/gear.css")
class ChamberTermsView extends DeskPage implements BeforeEnterObserver {

    private static final int REASON_MAX = 200;

    private final Chambers chambers;
    private final Stations stations;

    ChamberTermsView(Desk desk, Chambers chambers, Stations stations) {
        super(desk, "Gear of a chamber");
        this.chambers = chambers;
        this.stations = stations;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        Optional<Station> station = label(entering, "station", StationId::new).flatMap(stations::find)
                .map(found -> found.state()).filter(found -> found.stationClass().equals("chamber"));
        if (station.isEmpty()) {
            head("No such chamber", "No station of the class chamber has that label.");
            show(Links.to("shop/chamber", "Back to the chambers"));
            return;
        }
        StationId id = station.get().id();
        Optional<Chamber> chamber = chambers.find(id).map(found -> found.state());
        head((chamber.isPresent() ? "Gear of " : "Register ") + id + " " + station.get().title(),
                "The drawing and the shop's welding procedure go before every value entered here.");
        List<Station> locks = stations.all().stream()
                .filter(one -> one.stationClass().equals("transfer-lock")).toList();
        TermsFields fields = new TermsFields(chamber.map(Chamber::terms), new LockFields(locks), chambers.materials());
        show(Forms.panel("Gear, limits, materials", fields),
                chamber.isPresent() ? changing(id, fields) : registering(id, fields),
                chamber.isPresent() ? leak(id) : Forms.note("A leak test is entered once it is registered."),
                Forms.row(Links.to("shop/chamber", "Back to the chambers")));
    }

    private Component registering(StationId id, TermsFields fields) {
        PasswordField pin = Forms.pin("Your PIN");
        return Forms.panel("Sign", Forms.row(pin, Forms.act("Register and sign", () -> signed(pin, "Registered",
                signer -> new ChamberCommand.RegisterChamber(id, fields.terms(), desk().origin(), signer)))));
    }

    private Component changing(StationId id, TermsFields fields) {
        TextField reason = new TextField("Reason for the change");
        reason.setMaxLength(REASON_MAX);
        PasswordField pin = Forms.pin("Your PIN");
        return Forms.panel("Sign", Forms.note("They count from the next session on; one that runs keeps the limits that"
                + " its purge began with."), Forms.row(reason, pin, Forms.act("Change and sign", () ->
                        signed(pin, "Changed", signer -> new ChamberCommand.ChangeTerms(
                                id, fields.terms(), reason.getValue(), desk().origin(), signer)))));
    }

    private Component leak(StationId id) {
        TextField air = Forms.text("Air that leaks in, L/min", "such as 0.0005; 0 where none was found");
        TextField mixing = Forms.text("Purge flow that counts, %", "from a fitted purge; may stay empty");
        TextField how = Forms.text("How it was found", "such as: rise test over 30 min");
        how.setMaxLength(REASON_MAX);
        PasswordField pin = Forms.pin("PIN, leak test");
        return Forms.panel("Leak test", Forms.row(air, mixing, how, pin, Forms.act("Enter and sign", () ->
                signed(pin, "Entered", signer -> new ChamberCommand.RecordLeak(id,
                        Numbers.decimal("air that leaks in", air.getValue()),
                        Numbers.optional("share", mixing.getValue()).map(percent -> percent.movePointLeft(2)),
                        how.getValue(), desk().origin(), signer)))));
    }

    private void signed(PasswordField pin, String word, Function<Signer, ChamberCommand> command) {
        told().signer(pin).ifPresent(signer -> told().guarded(() -> told().outcome(() ->
                chambers.execute(command.apply(signer)))).ifPresent(chamber -> told().done(word,
                        chamber.station() + " is kept so from now on.")));
    }
}
