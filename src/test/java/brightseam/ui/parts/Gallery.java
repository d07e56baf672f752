package brightseam.ui.parts;

import brightseam.kernel.Limits;
import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** Every part in every state, one page each: gallery/bench, gallery/refused, gallery/holding and so on. */
@Route("gallery")
@PageTitle("Parts")
@AnonymousAllowed
public class Gallery extends Div implements HasUrlParameter<String> {

    private static final Hold PICKLE = new Hold(Duration.ofMinutes(2), Optional.of(Duration.ofMinutes(5)));
    private static final List<String> CAUTIONS = List.of(
            "Hydrofluoric acid: calcium gluconate gel at hand and in date, never alone.",
            "Face shield, acid gauntlets over nitrile, apron on.");

    private final ShopClock clock;
    private final ScreenFrame frame =
            new ScreenFrame("Tidewell Frames", Optional.of(new DemoMark(10)), ZoneOffset.UTC);

    /** Opens with somebody signed in. */
    public Gallery(ShopClock clock) {
        this.clock = clock;
        frame.wallTime(clock.now().wall());
        frame.signedIn(Optional.of("Ada Quill · fabricator"));
        add(frame);
    }

    @Override
    public void setParameter(BeforeEvent event, String page) {
        frame.removeAll();
        frame.add(shown(page));
    }

    private Component shown(String page) {
        return switch (page) {
            case "bench" -> bench();
            case "accepted" -> verdict(true);
            case "refused" -> verdict(false);
            case "holding" -> hold(PICKLE, 30);
            case "soon" -> hold(PICKLE, 112);
            case "clocks" -> new Div(hold(PICKLE, 150), hold(PICKLE, 312),
                    hold(new Hold(Duration.ofHours(2), Optional.empty()), 60),
                    hold(new Hold(Duration.ofMinutes(2), Optional.empty()), 200));
            case "pads" -> new Div(pad(KeyPad.reading("Bath temperature", "°C", "Limits: 45 to 60 °C", 1, true)),
                    pad(KeyPad.pin("Ada Quill, your PIN", 4)),
                    pad(KeyPad.passFail("Water break", "Water sheets for 30 s without a break")));
            case "reading" -> pad(KeyPad.reading("Bath temperature", "°C", "Limits: 45 to 60 °C", 1, true));
            case "pin" -> pad(KeyPad.pin("Ada Quill, your PIN", 4));
            case "look" -> pad(KeyPad.passFail("Water break", "Water sheets for 30 s without a break"));
            case "fields" -> fields();
            case "charts" -> charts();
            default -> throw new IllegalArgumentException("no such page: " + page);
        };
    }

    private static StepStrip strip() {
        return new StepStrip(List.of(
                new StepStrip.Stop(10, "Cut", StepStrip.State.SIGNED),
                new StepStrip.Stop(20, "Cope", StepStrip.State.SIGNED),
                new StepStrip.Stop(30, "Deburr", StepStrip.State.SIGNED),
                new StepStrip.Stop(40, "Dimensional check", StepStrip.State.SIGNED),
                new StepStrip.Stop(50, "Alkaline degrease", StepStrip.State.SUPERSEDED),
                new StepStrip.Stop(60, "Rinse", StepStrip.State.SUPERSEDED),
                new StepStrip.Stop(70, "Acid pickle", StepStrip.State.NOW),
                new StepStrip.Stop(80, "Rinse", StepStrip.State.TO_COME),
                new StepStrip.Stop(90, "Deionised rinse", StepStrip.State.TO_COME),
                new StepStrip.Stop(100, "Water-break check", StepStrip.State.STOPPED),
                new StepStrip.Stop(110, "Dry", StepStrip.State.TO_COME),
                new StepStrip.Stop(120, "Solvent wipe", StepStrip.State.TO_COME),
                new StepStrip.Stop(130, "White-cloth check", StepStrip.State.STAMP_TO_COME),
                new StepStrip.Stop(140, "Gloved bagging", StepStrip.State.TO_COME)));
    }

    private static WorkCard card() {
        return new WorkCard("Step 70 · pickle tank P1 · traveller T-1042, 6 pieces", "Acid pickle");
    }

    private static WorkCard bench() {
        WorkCard card = card();
        card.instruction("Lower the basket until every piece is covered. Keep it moving. Lift it when the minimum is"
                + " reached and go straight to the rinse.");
        card.add(new CautionList(CAUTIONS), strip(), scans(new Div()));
        card.actions(Action.main("Start the hold", pressed -> card.verdict().accepted("Started", "Acid pickle runs.")));
        return card;
    }

    private static WorkCard verdict(boolean accepted) {
        WorkCard card = card();
        card.instruction("Scan the basket.");
        card.add(strip());
        card.actions(Action.main("Sign step 70", pressed -> { }), Action.other("Stop", pressed -> { }));
        if (accepted) {
            card.verdict().accepted("Signed", "Step 60, rinse. Next: acid pickle at tank P1.");
        } else {
            card.verdict().refused("Wrong bin", "B-0142 is a shop bin. Cleaned parts go into a clean bin.",
                    "Scan a clean bin.");
        }
        return card;
    }

    private WorkCard hold(Hold hold, long sinceSeconds) {
        WorkCard card = card();
        Moment now = clock.now();
        Moment started = now.plus(Duration.ofSeconds(-sinceSeconds));
        HoldClock digits = new HoldClock(new RunningHold("Pickle", started, now, hold, 1, "lift the basket and rinse.",
                "too much wall is gone, a nonconformance is opened."));
        Span phases = new Span();
        phases.addClassName("phases");
        digits.addPhaseChangedListener(changed -> phases.setText(phases.getText() + changed.phase() + " "));
        card.add(digits, new GapClock("Rinse", new Gap(Duration.ofSeconds(25), "Acid dries on and keeps etching."),
                now.plus(Duration.ofMillis(-sinceSeconds * 100)), now, 1), strip(), phases);
        card.actions(Action.main("Basket is out", pressed -> { }));
        return card;
    }

    private static WorkCard pad(KeyPad pad) {
        WorkCard card = new WorkCard("Step 70 · pickle tank P1", "Before the hold");
        Span entered = new Span();
        entered.addClassName("entered");
        pad.addEnteredListener(pressed -> entered.setText("Entered " + pressed.value()));
        card.add(pad, entered);
        return card;
    }

    private static WorkCard fields() {
        WorkCard card = new WorkCard("Lead", "Names and labels");
        Input plain = new Input();
        plain.setId("plain");
        plain.setAriaLabel("Plain field");
        TextField field = new TextField("Remark");
        field.setId("remark");
        Div log = new Div();
        card.add(plain, field, scans(log), log);
        Span pressed = new Span();
        pressed.setId("pressed");
        card.actions(Action.main("Release", click -> pressed.setText(pressed.getText() + "pressed ")));
        card.add(pressed);
        return card;
    }

    private static ScanInput scans(Div log) {
        log.setId("scans");
        ScanInput scans = new ScanInput(new FrameReader("scan/frame", "X-Shop", "token"));
        // Wider than in the shop, so that a busy test machine does not tear a scan apart.
        scans.timing(Duration.ofMillis(120), Duration.ofMillis(300), 4);
        scans.addScanListener(scan -> log.add(new Div(scan.source() + ":" + scan.data()
                .replace("\u001d", "<GS>").replace("\u001e", "<RS>").replace("\u0004", "<EOT>"))));
        return scans;
    }

    private static WorkCard charts() {
        WorkCard card = new WorkCard("Stamp desk", "Holds and readings");
        card.add(new H2("Holds"));
        for (long seconds : List.of(70L, 190L, 342L)) {
            card.add(new Chart(new HoldBar("Acid pickle", PICKLE, Duration.ofSeconds(seconds))));
        }
        card.add(new Chart(new HoldBar("Dry", new Hold(Duration.ofMinutes(45), Optional.empty()),
                Duration.ofMinutes(52))));
        card.add(new H2("Readings"));
        Limits range = new Limits(Optional.of(new BigDecimal("45")), Optional.of(new BigDecimal("60")));
        card.add(new Chart(new ReadingScale("Bath temperature", "°C", range, new BigDecimal("52.5"))));
        card.add(new Chart(new ReadingScale("Bath temperature", "°C", range, new BigDecimal("63.0"))));
        card.add(new Chart(new ReadingScale("Rinse resistivity", "MΩ·cm",
                new Limits(Optional.of(new BigDecimal("0.2")), Optional.empty()), new BigDecimal("0.85"))));
        card.add(new Chart(new ReadingScale("Oxygen", "ppm",
                new Limits(Optional.empty(), Optional.of(new BigDecimal("40"))), new BigDecimal("12"))));
        return card;
    }
}
