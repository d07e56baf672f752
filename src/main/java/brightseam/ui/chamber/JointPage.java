package brightseam.ui.chamber;

import brightseam.chart.SeriesChart;
import brightseam.kernel.JointId;
import brightseam.kernel.LabelEntry;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.people.Signer;
import brightseam.people.shell.SignIn;
import brightseam.scan.Expected;
import brightseam.scan.LabelKind;
import brightseam.scan.OwnLabel;
import brightseam.session.shell.SessionView;
import brightseam.ui.desk.Pulse;
import brightseam.ui.entry.Frames;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.Verdict;
import brightseam.ui.weld.OxygenChart;
import brightseam.weld.Arc;
import brightseam.weld.ArcPurpose;
import brightseam.weld.Joint;
import brightseam.weld.shell.JointView;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;

/** One joint: what has to hold before its arc, the arc's one large switch, what the readings proved. */
@Route("chamber/:session/joint/:joint")
@PageTitle("Joint")
@RolesAllowed({"FABRICATOR", "LEAD", "INSPECTOR"})
class JointPage extends ChamberPage implements BeforeEnterObserver {

    private final SessionDeeds deeds;
    private final JointCards cards;
    private final SessionSights sights;
    private final Conditions conditions;
    private SessionId session;
    private JointId joint;
    private ReadyFor ready = ReadyFor.NOTHING;
    private Optional<Traced> traced = Optional.empty();

    /** The oxygen over an arc, drawn once for what is known of it. */
    private record Traced(Arc arc, Doing.Trace trace) {}

    JointPage(ChamberServices services, SignIn signIn, Frames frames, Changes changes, Pulse pulse) {
        super(services, signIn, frames, changes, pulse);
        deeds = new SessionDeeds(services, actor());
        cards = new JointCards(services.vocabulary(), services.wording(), zone(), acts());
        sights = new SessionSights(services, zone());
        conditions = new Conditions(services.wording(), zone());
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        Optional<SessionView> found = SessionSights.named(entering).flatMap(id -> services().views().of(id));
        Optional<JointId> named = found.flatMap(view -> named(entering, view))
                .filter(id -> services().joints().view(id).isPresent());
        if (named.isEmpty()) {
            entering.forwardTo(ChambersPage.class);
            return;
        }
        session = found.orElseThrow().session().id();
        joint = named.get();
        refresh();
    }

    private static Optional<JointId> named(BeforeEnterEvent entering, SessionView view) {
        try {
            return entering.getRouteParameters().get("joint")
                    .map(number -> new JointId(view.session().kit(), number));
        } catch (IllegalArgumentException noNumber) {
            return Optional.empty();
        }
    }

    @Override
    Optional<Shown> look() {
        return Optional.ofNullable(session).flatMap(services().views()::of).flatMap(view ->
                services().joints().view(joint).map(found -> {
                    boolean burns = found.running().isPresent();
                    List<Refusal> against = burns ? List.of()
                            : services().joints().objections(actor(), joint, ready.request());
                    return new Shown(cards.card(view, found, ready, against, trace(found)), sights.live(view,
                            burns ? List.of() : conditions.of(view, found.plan(), ready, person(), against)));
                }));
    }

    private Optional<Doing.Trace> trace(JointView found) {
        Optional<Arc> proven = found.joint().flatMap(Joint::lastArc).filter(arc -> arc.evidence().isPresent());
        traced = proven.map(arc -> traced.filter(kept -> kept.arc().equals(arc)).orElseGet(() -> {
            SeriesChart chart = OxygenChart.of(found.joint().orElseThrow(), arc, services().readings(), found.now(),
                    zone());
            return new Traced(arc, new Doing.Trace(chart.svg(), chart.words()));
        }));
        return traced.map(Traced::trace);
    }

    @Override
    Verdict does(Asked done, Optional<Signer> signer) {
        ready = switch (done.act().kind()) {
            case CONFIRM_BACK_SIDE -> ready.backSideSeen();
            case ARM -> ready.arm();
            case TACK_FIRST -> ready.purpose(ArcPurpose.TACK);
            case WELD_NEXT -> ready.purpose(ArcPurpose.WELD);
            case REPAIR_NEXT -> ready.purpose(ArcPurpose.REPAIR);
            case OPEN_SESSION, LEAVE_OUT, TAKE_BACK, CLOSE_CHAMBER, ABANDON, START_PURGE, STOP_PURGE, END_SESSION,
                    STAY_SHUT, OPEN_CHAMBER, SIGN_WELDS, OPEN_OUTER, SHUT_OUTER,
                    PURGE_LOCK, NOTE_CYCLE, OPEN_INNER, SHUT_INNER ->
                throw new IllegalArgumentException("not at a joint: " + done.act().kind());
        };
        return new Verdict.Silent();
    }

    @Override
    Verdict scans(OwnLabel label, LabelEntry entry) {
        Expected expected = Expected.only(LabelKind.TRAVELLER);
        if (expected.refuses(label).isPresent()) {
            return Verdict.refused(services().wording(), List.of(expected.refuses(label).get()));
        }
        ready = ready.filler(label.traveller().orElseThrow());
        return new Verdict.Accepted("Read", label.id() + ": whether it is the right one stands beside it.");
    }

    @Override
    public void arc(boolean start, int run, long atElapsedMillis) {
        Optional<Arc> burns = services().joints().view(joint).flatMap(JointView::running);
        Verdict verdict = start ? begin(atElapsedMillis) : end(burns, run);
        refresh();
        tell(verdict);
    }

    /** A start counts at once or not at all: one that was long on its way would begin an arc that nobody struck. */
    private Verdict begin(long atElapsedMillis) {
        if (!acts() || !ready.armed()) {
            return new Verdict.Refused("Not armed", "Nobody signed for this joint on this tablet.",
                    "Arm it with your PIN.");
        }
        if (ArcPress.isLate(atElapsedMillis, services().clock().now(), services().clock().speed())) {
            return new Verdict.Refused("Press came late", "It was on its way too long. No arc was written down.",
                    "If the arc burns, end it and look at the link; then press again.");
        }
        return deeds.told("Arc on", () -> services().joints().startArc(actor(), joint, ready.request()),
                state -> "Arc " + state.arcs().size() + " runs.");
    }

    /** The end of the arc that the page showed counts however late it comes: the arc is out. */
    private Verdict end(Optional<Arc> burns, int run) {
        if (burns.filter(arc -> arc.run() == run).isEmpty()) {
            return new Verdict.Refused("No such arc", "Arc " + run + " does not burn any more.",
                    "Look at the card: it shows how things stand now.");
        }
        ready = ready.afterArc();
        return deeds.told("Arc off", () -> services().joints().stopArc(actor(), joint),
                state -> "The part stays in the argon until it is cool.");
    }
}
