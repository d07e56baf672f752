package brightseam.ui.admin;

import brightseam.kernel.HeatId;
import brightseam.material.Heat;
import brightseam.material.HeatCommand;
import brightseam.material.shell.Heats;
import brightseam.ui.desk.Csv;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.TwoPresses;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.function.Supplier;

/** The heats of the shop. */
@Route("shop/heats")
@PageTitle("Heats")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class HeatsView extends DeskPage {

    private final Heats heats;
    private final DeskTable<Heat> table = new DeskTable<Heat>("Every heat",
            "No heat is registered. Register each with its certificate above; without one nothing is released.")
            .text("Heat", heat -> heat.id().value())
            .text("Metal", heat -> "grade " + heat.grade() + " " + heat.form() + ", " + heat.dimensions())
            .text("Maker and certificate", heat -> heat.maker() + ", " + heat.certificateNumber())
            .text("Received", heat -> Words.stamp(heat.receivedAt(), desk().zone()))
            .text("State", heat -> heat.holdReason().map(why -> "ON HOLD: " + why).orElse("may be used"))
            .act("Actions", this::actions);

    HeatsView(Desk desk, Heats heats) {
        super(desk, "Heats");
        this.heats = heats;
        show(Forms.panel("Register a heat", registration()),
                Forms.panel("All heats", table.file(() -> csv(heats.all())),
                        Forms.row(Links.to("shop/labels", "Print labels"))));
        table.show(heats.all());
    }

    private Div registration() {
        TextField label = Forms.text("Label", "begins with H-, such as H-9T3381");
        TextField grade = Forms.text("Grade", "as procedures name it, such as 9");
        TextField form = Forms.text("Form", "one word: tube, bar, wire");
        TextField dimensions = Forms.text("Dimensions", "with units, such as 38.1 x 1.65 mm");
        TextField maker = Forms.text("Maker", "whose certificate it is");
        TextField certificate = Forms.text("Certificate number", "the maker's number");
        return Forms.row(label, grade, form, dimensions, maker, certificate, Forms.act("Register", () ->
                told().guarded(() -> told().outcome(() -> heats.execute(new HeatCommand.RegisterHeat(
                        heatLabel(label.getValue()), grade.getValue(), form.getValue(), dimensions.getValue(),
                        maker.getValue(), certificate.getValue(), desk().now().wall(), desk().origin()))))
                        .ifPresent(heat -> {
                            told().done("Registered", heat.id() + ", grade " + heat.grade() + " " + heat.form() + ".");
                            List.of(label, dimensions, certificate).forEach(TextField::clear);
                            table.show(heats.all());
                        })));
    }

    private Component actions(Heat heat) {
        return heat.isOnHold()
                ? TwoPresses.withReason("Release hold", heat.id().value(), reason -> run("Hold released",
                        () -> new HeatCommand.ReleaseHold(heat.id(), reason, desk().origin())))
                : TwoPresses.withReason("Put on hold", heat.id().value(), reason -> run("On hold",
                        () -> new HeatCommand.PutOnHold(heat.id(), reason, desk().origin())));
    }

    private void run(String word, Supplier<HeatCommand> command) {
        told().guarded(() -> told().outcome(() -> heats.execute(command.get()))).ifPresent(after -> {
            told().done(word, "Heat " + after.id() + ".");
            table.show(heats.all());
        });
    }

    private static HeatId heatLabel(String text) {
        if (!text.strip().startsWith("H-")) {
            throw new IllegalArgumentException("heat label: begins with H-");
        }
        return new HeatId(text.strip());
    }

    private static String csv(List<Heat> all) {
        return Csv.write(
                List.of("heat", "grade", "form", "dimensions", "maker", "certificate", "received", "on_hold"),
                all.stream().map(heat -> List.of(heat.id().value(), heat.grade(), heat.form(), heat.dimensions(),
                        heat.maker(), heat.certificateNumber(), heat.receivedAt().toString(),
                        heat.holdReason().orElse(""))).toList());
    }
}
