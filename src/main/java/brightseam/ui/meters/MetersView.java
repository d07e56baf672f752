package brightseam.ui.meters;

import brightseam.device.MeterCommand;
import brightseam.device.MeterRecord;
import brightseam.device.shell.Meters;
import brightseam.device.shell.ModbusFeeds;
import brightseam.device.shell.Readings;
import brightseam.kernel.SupplyId;
import brightseam.line.shell.Stations;
import brightseam.supply.Supply;
import brightseam.supply.shell.Supplies;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Pulse;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every meter: what it says now, and what is wrong with it. */
@Route("shop/meters")
@PageTitle("Meters")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class MetersView extends DeskPage {

    private static final Duration LOOK = Duration.ofSeconds(2);

    private final Meters meters;
    private final Readings readings;
    private final ModbusFeeds modbus;
    private final Supplies supplies;
    private final Stations stations;
    private final Div form = new Div();
    private final DeskTable<MeterLine> table = new DeskTable<MeterLine>("Every meter",
            "No meter is registered. Register the gauge among the supplies, then install it above.")
            .cell("Meter", MetersView::meter)
            .cell("Says now", MetersView::value)
            .cell("State", MetersView::state);

    MetersView(Desk desk, Meters meters, Readings readings, ModbusFeeds modbus, Supplies supplies,
            Stations stations, Pulse pulse) {
        super(desk, "Meters");
        this.meters = meters;
        this.readings = readings;
        this.modbus = modbus;
        this.supplies = supplies;
        this.stations = stations;
        show(Forms.panel("All meters", table), Forms.panel("Install a meter", form));
        form();
        refresh();
        pulse.every(this, LOOK, this::refresh);
    }

    private void refresh() {
        List<MeterLine> lines = meters.all().stream().map(record -> MeterLine.of(record,
                readings.now(record.meter().id()), modbus.failure(record.meter().id()))).toList();
        long stopped = lines.stream().filter(MeterLine::stops).count();
        head("Meters", lines.isEmpty() || stopped == 0 ? ""
                : stopped == 1 ? "One meter cannot be relied on now." : stopped + " meters cannot be relied on now.");
        table.show(lines);
    }

    private void form() {
        Set<SupplyId> known = meters.all().stream().map(MeterRecord::meter).map(meter -> meter.id())
                .collect(Collectors.toSet());
        Select<Supply> gauge = new Select<>();
        gauge.setLabel("Gauge");
        gauge.setHelperText("its calibration is kept among the supplies");
        gauge.setItems(supplies.all().stream().filter(supply -> supply.isGauge() && supply.standing().isUsable()
                && !known.contains(supply.id())).toList());
        gauge.setItemLabelGenerator(one -> one.id() + " " + one.title());
        MeterFields fields = new MeterFields(stations.all(), Optional.empty(), desk().isDemo());
        PasswordField pin = Forms.pin("Your PIN");
        form.removeAll();
        form.add(Forms.row(gauge), fields, Forms.row(pin, Forms.act("Install it and sign",
                () -> register(gauge, fields, pin))));
    }

    private void register(Select<Supply> gauge, MeterFields fields, PasswordField pin) {
        told().signer(pin).flatMap(signer -> told().guarded(() -> {
            SupplyId id = gauge.getOptionalValue().map(Supply::id)
                    .orElseThrow(() -> new IllegalArgumentException("gauge: choose one"));
            return told().outcome(() -> meters.execute(
                    new MeterCommand.RegisterMeter(id, fields.terms(), desk().origin(), signer)));
        })).ifPresent(record -> {
            told().done("Installed", record.meter().id() + ". Its page has its chart and, where its device sends, the"
                    + " token for it.");
            form();
            refresh();
        });
    }

    private static Component meter(MeterLine line) {
        Div what = new Div(new Span(line.what()));
        what.addClassName("meter-what");
        Div cell = new Div(Links.to("shop/meters/" + line.id(), line.id().value()), what);
        cell.getElement().setAttribute("data-meter", line.id().value());
        return cell;
    }

    private static Component value(MeterLine line) {
        Span value = new Span(line.value());
        value.addClassName("bath-state");
        return new Div(value, new Div(new Span(Stream.of(line.age(), line.simulated() ? "simulated" : "")
                .filter(word -> !word.isEmpty()).collect(Collectors.joining(", ")))));
    }

    private static Component state(MeterLine line) {
        Span word = new Span(line.state());
        word.addClassName(line.stops() ? "bath-stopped" : "bath-state");
        return new Div(word, new Div(new Span(line.detail())));
    }
}
