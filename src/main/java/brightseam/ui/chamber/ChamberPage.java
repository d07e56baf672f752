package brightseam.ui.chamber;

import brightseam.kernel.LabelEntry;
import brightseam.people.Person;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.scan.Expected;
import brightseam.scan.LabelKind;
import brightseam.scan.OwnLabel;
import brightseam.scan.ScanReading;
import brightseam.traveller.shell.Actor;
import brightseam.ui.desk.Pulse;
import brightseam.ui.entry.Frames;
import brightseam.ui.entry.Scans;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.ScanInput;
import brightseam.ui.parts.Scanned;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.Verdict;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A screen of the chamber: the strip, one card, the page's ear for scans. Looks again every second, and whenever
 * something is stored on whichever tablet; what is touched counts only while it still stands on the card.
 */
@StyleSheet("context://frontend/bench.css")
@StyleSheet("context://frontend/chamber.css")
abstract class ChamberPage extends Composite<ScreenFrame> implements Hands {

    private static final Duration LOOK = Duration.ofSeconds(1);
    private static final Verdict MOVED_ON = new Verdict.Refused("Moved on",
            "That could be done when it was shown, and cannot be any more. Nothing was written down.",
            "Look at the card: it shows how things stand now.");

    private final ChamberServices services;
    private final SignIn signIn;
    private final Frames frames;
    private final Actor actor;
    private final Person person;
    private final ChamberScreen screen;
    private Optional<Asked> asked = Optional.empty();

    /** What there is to show. */
    record Shown(ChamberCard card, Live live) {}

    ChamberPage(ChamberServices services, SignIn signIn, Frames frames, Changes changes, Pulse pulse) {
        this.services = services;
        this.signIn = signIn;
        this.frames = frames;
        SignedInPerson here = signIn.here().orElseThrow();
        this.actor = new Actor(here.badge(), here.tablet());
        this.person = services.people().find(here.badge()).orElseThrow();
        this.screen = new ChamberScreen(new Faces(this, services.clock(), services.vocabulary().safetyNotice()), this);
        ScanInput input = frames.scans();
        input.addScanListener(this::heard);
        Div page = new Div(screen, input);
        page.addClassNames("bench", "chamber");
        getContent().add(page);
        changes.follow(this, streams -> refresh());
        pulse.every(this, LOOK, this::refresh);
    }

    @Override
    protected final ScreenFrame initContent() {
        return frames.make();
    }

    /** What stands on the screen now; empty where there is nothing to show any more. */
    abstract Optional<Shown> look();

    /** Does what {@code done} says; everything that had to be asked is answered. */
    abstract Verdict does(Asked done, Optional<Signer> signer);

    /** Does what the scan of {@code label} asks for here. */
    abstract Verdict scans(OwnLabel label, LabelEntry entry);

    final ChamberServices services() {
        return services;
    }

    final Actor actor() {
        return actor;
    }

    final Person person() {
        return person;
    }

    final ZoneId zone() {
        return ZoneId.systemDefault();
    }

    /** Whether whoever is signed in may do something here; an inspector only looks. */
    final boolean acts() {
        return person.holds(Role.FABRICATOR) || person.holds(Role.LEAD);
    }

    final boolean leads() {
        return person.holds(Role.LEAD);
    }

    /** Looks again and shows what holds now. */
    final void refresh() {
        getContent().wallTime(services.clock().now().wall());
        look().ifPresent(now -> screen.show(asked.map(now.card()::asking).orElse(now.card()), now.live()));
    }

    final void tell(Verdict verdict) {
        if (verdict instanceof Verdict.HandOver to) {
            signIn.signOut();
            getUI().ifPresent(ui -> ui.getPage().setLocation("sign-in?badge=" + to.badge()));
            return;
        }
        screen.tell(verdict);
    }

    @Override
    public final void touches(Act act) {
        asked = stillOffered(act).map(Asked::of);
        if (asked.isEmpty()) {
            refresh();
            tell(MOVED_ON);
            return;
        }
        goOn();
    }

    /** Carries the action out, or asks for the next thing that has to be said before. */
    private void goOn() {
        Asked now = asked.orElseThrow();
        if (now.stage() == Asked.Stage.NOTHING_MORE) {
            finish(now, Optional.empty());
        } else {
            refresh();
        }
    }

    private void finish(Asked done, Optional<Signer> signer) {
        Verdict verdict = stillOffered(done.act()).isPresent() ? does(done, signer) : MOVED_ON;
        asked = Optional.empty();
        refresh();
        tell(verdict);
    }

    /** The action as the card offers it now; empty where it does not any more. */
    private Optional<Act> stillOffered(Act act) {
        return look().flatMap(now -> offered(now.card()).filter(one -> one.kind() == act.kind()
                && one.subject().equals(act.subject()) && one.held().isEmpty()).findFirst());
    }

    private static Stream<Act> offered(ChamberCard card) {
        return Stream.concat(card.acts().stream(), card.doing() instanceof Doing.CheckIn list
                ? list.needs().stream().flatMap(need -> need.acts().stream()) : Stream.empty());
    }

    @Override
    public final void confirms() {
        asked = asked.map(Asked::confirmed);
        asked.ifPresent(any -> goOn());
    }

    @Override
    public final void because(String reason) {
        asked = asked.map(now -> now.because(reason));
        asked.ifPresent(any -> goOn());
    }

    @Override
    public final void types() {
        asked = asked.map(Asked::inOwnWords);
        refresh();
    }

    @Override
    public final void signs(String pin) {
        asked.filter(now -> now.stage() == Asked.Stage.PIN).ifPresent(now -> {
            Verdict verdict = new SessionDeeds(services, actor).signed(pin, signer -> {
                finish(now, Optional.of(signer));
                return new Verdict.Silent();
            });
            if (!(verdict instanceof Verdict.Silent)) {
                tell(verdict);
            }
        });
    }

    @Override
    public final void goesBack() {
        asked = Optional.empty();
        refresh();
        screen.tell(new Verdict.Silent());
    }

    @Override
    public final void goes(String path) {
        getUI().ifPresent(ui -> ui.navigate(path));
    }

    @Override
    public void arc(boolean start, int run, long atElapsedMillis) {
        throw new IllegalStateException("no arc is begun on this screen");
    }

    private void heard(Scanned scan) {
        LabelEntry entry = switch (scan.source()) {
            case WEDGE -> LabelEntry.SCANNED;
            case CAMERA -> LabelEntry.CAMERA;
            case TYPED -> LabelEntry.TYPED;
        };
        ScanReading reading = Scans.read(scan, services.clock().now());
        Verdict verdict = reading instanceof OwnLabel label ? heard(label, entry)
                : Verdict.refused(services.wording(), List.of(
                        Expected.only(LabelKind.TRAVELLER, LabelKind.BIN, LabelKind.SUPPLY).refuses(reading)
                                .orElseThrow()));
        refresh();
        tell(verdict);
    }

    private Verdict heard(OwnLabel label, LabelEntry entry) {
        if (label.kind() == LabelKind.BADGE) {
            return label.badge().filter(badge -> !badge.equals(actor.badge())).<Verdict>map(Verdict.HandOver::new)
                    .orElseGet(() -> new Verdict.Accepted("Your badge", "You are signed in here."));
        }
        if (asked.filter(now -> now.stage() == Asked.Stage.SCAN).isPresent()) {
            asked = asked.map(now -> label.kind() == LabelKind.SUPPLY ? now.with(label.id()) : now);
            return label.kind() == LabelKind.SUPPLY ? new Verdict.Silent()
                    : Verdict.refused(services.wording(), List.of(
                            Expected.only(LabelKind.SUPPLY).refuses(label).orElseThrow()));
        }
        return acts() ? scans(label, entry) : new Verdict.Refused("Only to look",
                "An inspector looks at a session and does nothing in it.", "Ask a fabricator or the lead.");
    }
}
