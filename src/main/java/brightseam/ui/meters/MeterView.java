package brightseam.ui.meters;

import brightseam.device.Meter;
import brightseam.device.MeterNow;
import brightseam.device.MeterRecord;
import brightseam.device.shell.FeedTokens;
import brightseam.device.shell.Meters;
import brightseam.device.shell.ModbusFeeds;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.line.shell.Stations;
import brightseam.people.Role;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Pulse;
import brightseam.ui.parts.Chart;
import brightseam.ui.parts.Drawn;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Duration;
import java.util.Optional;

/** One meter: what it says now, its chart, typing a reading, and how it is installed. */
@Route("shop/meters/:meter")
@PageTitle("Meter")
@RolesAllowed({"LEAD", "ADMINISTRATOR", "INSPECTOR", "FABRICATOR"})
class MeterView extends DeskPage implements BeforeEnterObserver {

    private static final Duration LOOK = Duration.ofSeconds(1);
    /** A chart over hours is drawn anew every so many looks only. */
    private static final int LOOKS_A_LONG_CHART = 10;

    private final Meters meters;
    private final Readings readings;
    private final ModbusFeeds modbus;
    private final FeedTokens tokens;
    private final Stations stations;
    private final Paragraph value = new Paragraph();
    private final Paragraph detail = new Paragraph();
    private final Div drawing = new Div();
    private final SightFields sight = new SightFields(this::draw);
    private Optional<SupplyId> id = Optional.empty();
    private int looks;

    MeterView(Desk desk, Meters meters, Readings readings, ModbusFeeds modbus, FeedTokens tokens, Stations stations,
            Pulse pulse) {
        super(desk, "Meter");
        this.meters = meters;
        this.readings = readings;
        this.modbus = modbus;
        this.tokens = tokens;
        this.stations = stations;
        value.addClassName("meter-value");
        detail.addClassName("meter-detail");
        detail.getElement().setAttribute("role", "status");
        pulse.every(this, LOOK, this::look);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        id = label(entering, "meter", SupplyId::new).filter(one -> meters.find(one).isPresent());
        if (id.isEmpty()) {
            head("No such meter", "No meter of this shop has that label.");
            show(Links.to("shop/meters", "Back to the meters"));
            return;
        }
        open();
    }

    /** Made anew only when this page did something: the forms keep what was keyed into them. */
    private void open() {
        MeterRecord record = record();
        Div ways = Forms.row();
        if (desk().holds(Role.LEAD, Role.ADMINISTRATOR)) {
            ways.add(Links.to("shop/meters", "All meters"));
        }
        show(Forms.panel("What it says now", value, detail, ways), Forms.panel("Chart", sight, drawing),
                new TypingForm(desk(), told(), readings, record, this::open), InstalledFacts.of(record, desk()),
                new KeepingForms(desk(), told(), meters, tokens, stations, record, this::open));
        look();
        draw();
    }

    private MeterRecord record() {
        return meters.find(id.orElseThrow()).orElseThrow().state();
    }

    private void look() {
        if (id.isEmpty()) {
            return;
        }
        MeterNow now = readings.now(id.get());
        MeterLine line = MeterLine.of(record(), now, modbus.failure(id.get()));
        head(line.id() + " " + line.what(), line.simulated()
                ? "Simulated: a program makes these readings up." : "");
        value.setText(line.value() + (line.age().isEmpty() ? "" : ", " + line.age()));
        detail.setText(line.detail().isEmpty() ? line.state() + "." : line.state() + ". " + line.detail());
        if (sight.isShort() || ++looks % LOOKS_A_LONG_CHART == 0) {
            draw();
        }
    }

    private void draw() {
        id.ifPresent(one -> told().guarded(() -> {
            Meter meter = record().meter();
            MeterSight seen = sight.sight();
            Moment now = desk().now();
            drawing.removeAll();
            drawing.add(new Chart(Drawn.of(seen.chart(meter, readings.chart(one, seen.fromMillis(now),
                    Math.max(seen.fromMillis(now) + 1, now.elapsedMillis()), MeterSight.COLUMNS), now,
                    desk().zone()))));
            return Optional.of(true);
        }));
    }
}
