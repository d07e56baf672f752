package brightseam.ui.meters;

import brightseam.device.Feed;
import brightseam.device.MeterCommand;
import brightseam.device.MeterRecord;
import brightseam.device.shell.FeedTokens;
import brightseam.device.shell.Meters;
import brightseam.kernel.SupplyId;
import brightseam.line.shell.Stations;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What who keeps meters does to one: token, terms, in use or not; each signed. Empty for anybody else. */
final class KeepingForms extends Div {

    private static final int REASON_MAX = 200;

    private final Desk desk;
    private final Told told;
    private final Meters meters;
    private final Runnable after;
    private final SupplyId id;

    KeepingForms(Desk desk, Told told, Meters meters, FeedTokens tokens, Stations stations, MeterRecord record,
            Runnable after) {
        this.desk = desk;
        this.told = told;
        this.meters = meters;
        this.after = after;
        this.id = record.meter().id();
        if (!desk.holds(Role.LEAD, Role.ADMINISTRATOR)) {
            return;
        }
        addClassName("bath-locks");
        if (record.meter().feed() instanceof Feed.Http && record.isInUse()) {
            add(token(tokens, record));
        }
        add(change(stations, record), record.isInUse() ? takeOut() : putBack());
    }

    private Component token(FeedTokens tokens, MeterRecord record) {
        PasswordField pin = Forms.pin("Your PIN");
        Div shown = new Div();
        shown.getElement().setAttribute("role", "status");
        return Forms.panel("Token of its device", Forms.note(record.token().isPresent()
                        ? "A new token ends the one that the device has now."
                        : "The device sends it with every message. It is shown once and kept nowhere."),
                Forms.row(pin, Forms.act("Make a token and sign", () -> told.signer(pin).flatMap(signer ->
                        told.outcome(() -> tokens.make(List.of(new MeterCommand.MakeToken(
                                id, desk.origin(), signer))))).ifPresent(token -> {
                                    shown.removeAll();
                                    Code code = new Code(token);
                                    code.addClassName("meter-token");
                                    shown.add(Forms.note("Write it into the device now; it is not shown again:"),
                                            code);
                                    told.done("Token made", "For the device of " + id + ".");
                                }))), shown);
    }

    private Component change(Stations stations, MeterRecord record) {
        MeterFields fields = new MeterFields(stations.all(), Optional.of(record.meter()), desk.isDemo());
        TextField reason = reason("Reason for the change");
        Div form = new Div(fields, signed(reason, "Change and sign", "Changed", signer ->
                new MeterCommand.ChangeTerms(id, fields.terms(), reason.getValue(), desk.origin(), signer)));
        return new Details("Change how it is installed", form);
    }

    private Component takeOut() {
        TextField reason = reason("Why it is taken out of use");
        return Forms.panel("Take it out of use", signed(reason, "Take it out and sign", "Taken out of use", signer ->
                new MeterCommand.TakeOutOfUse(id, reason.getValue(), desk.origin(), signer)));
    }

    private Component putBack() {
        PasswordField pin = Forms.pin("Your PIN");
        return Forms.panel("Use it again", Forms.row(pin, Forms.act("Use it again and sign", () -> run(pin,
                "In use again", signer -> new MeterCommand.PutBackIntoUse(id, desk.origin(), signer)))));
    }

    private Component signed(TextField reason, String words, String word, Function<Signer, MeterCommand> command) {
        PasswordField pin = Forms.pin("Your PIN");
        return Forms.row(reason, pin, Forms.act(words, () -> run(pin, word, command)));
    }

    private void run(PasswordField pin, String word, Function<Signer, MeterCommand> command) {
        told.signer(pin).flatMap(signer -> told.guarded(() ->
                told.outcome(() -> meters.execute(command.apply(signer))))).ifPresent(record -> {
                    told.done(word, id + ".");
                    after.run();
                });
    }

    private static TextField reason(String label) {
        TextField reason = new TextField(label);
        reason.setMaxLength(REASON_MAX);
        return reason;
    }
}
