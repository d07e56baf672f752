package brightseam.ui.entry;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.PinLife;
import brightseam.people.PinRefusal;
import brightseam.people.PinRules;
import brightseam.people.Recognition;
import brightseam.people.shell.FirstRun;
import brightseam.people.shell.People;
import brightseam.people.shell.PinChange;
import brightseam.people.shell.SignIn;
import brightseam.scan.Expected;
import brightseam.scan.LabelKind;
import brightseam.scan.OwnLabel;
import brightseam.scan.ScanReading;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.ScanInput;
import brightseam.ui.parts.Scanned;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.WorkCard;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import brightseam.words.Words;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Scan the badge, then the PIN. */
@Route("sign-in")
@PageTitle("Sign in")
@AnonymousAllowed
@StyleSheet("context://frontend/bench.css")
class SignInView extends Composite<ScreenFrame> implements BeforeEnterObserver {

    private final SignIn signIn;
    private final FirstRun firstRun;
    private final PinChange pins;
    private final People people;
    private final ShopClock clock;
    private final Wording wording;
    private final Frames frames;
    private final WorkCard card = new WorkCard("", "Sign in");

    SignInView(SignIn signIn, FirstRun firstRun, PinChange pins, People people, ShopClock clock, Wording wording,
            Frames frames) {
        this.signIn = signIn;
        this.firstRun = firstRun;
        this.pins = pins;
        this.people = people;
        this.clock = clock;
        this.wording = wording;
        this.frames = frames;
        ScanInput scans = frames.scans();
        scans.addScanListener(this::scanned);
        getContent().add(card, scans);
        askForBadge();
    }

    @Override
    protected ScreenFrame initContent() {
        return frames.make();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        if (firstRun.isNeeded()) {
            entering.forwardTo(FirstRunView.class);
            return;
        }
        entering.getLocation().getQueryParameters().getSingleParameter("badge")
                .filter(LabelKind.BADGE::owns).flatMap(SignInView::badge).ifPresent(this::askForPin);
    }

    private void askForBadge() {
        card.head("", "Sign in");
        card.removeAll();
        card.instruction("Scan your badge. Without a scanner use the camera, or type what the badge says.");
        card.actions();
    }

    private void askForPin(BadgeId badge) {
        card.head("Badge " + badge, "Your PIN");
        card.removeAll();
        KeyPad pad = KeyPad.pin("PIN of badge " + badge, PinRules.DIGITS_MIN);
        pad.addEnteredListener(entered -> recognise(badge, entered.value()));
        card.add(pad);
        card.actions(Action.other("Another badge", pressed -> {
            card.verdict().clear();
            askForBadge();
        }));
    }

    private void scanned(Scanned scan) {
        ScanReading reading = Scans.read(scan, clock.now());
        Optional<Refusal> refusal = Expected.only(LabelKind.BADGE).refuses(reading);
        if (refusal.isEmpty() && reading instanceof OwnLabel label) {
            card.verdict().clear();
            label.badge().ifPresent(this::askForPin);
        } else {
            refusal.ifPresent(why -> refuse(List.of(why)));
        }
    }

    private void recognise(BadgeId badge, String pin) {
        switch (signIn.signIn(badge, pin)) {
            case Recognition.Recognised known -> enter(badge);
            case Recognition.NotRecognised not -> chooseOrRefuse(badge, pin, not.refusals());
        }
    }

    /** Somebody whose PIN ends soon is told on the way in; they are signed in already. */
    private void enter(BadgeId badge) {
        if (people.pinStanding(badge).filter(PinLife.Standing.ENDS_SOON::equals).isEmpty()) {
            goOn();
            return;
        }
        card.head("Badge " + badge, "Your PIN ends soon");
        card.removeAll();
        card.instruction("It ends " + people.pinEnds(badge).map(end -> Words.stamp(end, ZoneId.systemDefault()))
                .orElse("soon") + ". After that it serves for choosing another one and for nothing else.");
        card.actions(Action.main("Go on", pressed -> goOn()),
                Action.other("Choose another PIN", pressed ->
                        getUI().ifPresent(ui -> ui.getPage().setLocation("pin"))));
    }

    private void goOn() {
        getUI().ifPresent(ui -> ui.getPage().setLocation("."));
    }

    private void chooseOrRefuse(BadgeId badge, String pin, List<Refusal> refusals) {
        switch (refusals.getLast()) {
            case PinRefusal.PinIsFirst first -> choose(badge, pin, "Somebody else chose the PIN that you entered.");
            case PinRefusal.PinExpired expired -> choose(badge, pin, "The PIN that you entered has ended.");
            default -> refuse(refusals);
        }
    }

    private void choose(BadgeId badge, String pin, String why) {
        card.verdict().clear();
        new NewPin(card, wording, pins, badge, pin, fresh -> recognise(badge, fresh)).ask(why);
    }

    private void refuse(List<Refusal> refusals) {
        Explanation why = wording.explain(refusals.getLast());
        card.verdict().refused(why.word(), why.reason(), why.wayOut());
    }

    private static Optional<BadgeId> badge(String label) {
        try {
            return Optional.of(new BadgeId(label));
        } catch (IllegalArgumentException noLabel) {
            return Optional.empty();
        }
    }
}
