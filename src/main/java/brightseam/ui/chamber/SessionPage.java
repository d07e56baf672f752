package brightseam.ui.chamber;

import brightseam.kernel.LabelEntry;
import brightseam.kernel.SessionId;
import brightseam.ledger.Versioned;
import brightseam.people.Signer;
import brightseam.people.shell.SignIn;
import brightseam.scan.Expected;
import brightseam.scan.LabelKind;
import brightseam.scan.OwnLabel;
import brightseam.session.Phase;
import brightseam.session.shell.SessionView;
import brightseam.ui.desk.Pulse;
import brightseam.ui.entry.Frames;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.Verdict;
import brightseam.weld.shell.JointView;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;

/** A session, from check-in to opening: the one thing to do now. */
@Route("chamber/:session")
@PageTitle("Chamber session")
@RolesAllowed({"FABRICATOR", "LEAD", "INSPECTOR"})
class SessionPage extends ChamberPage implements BeforeEnterObserver {

    private final SessionDeeds deeds;
    private final SessionCards cards;
    private final SessionSights sights;
    private SessionId session;
    private boolean takesBack;
    private boolean ends;

    SessionPage(ChamberServices services, SignIn signIn, Frames frames, Changes changes, Pulse pulse) {
        super(services, signIn, frames, changes, pulse);
        deeds = new SessionDeeds(services, actor());
        cards = new SessionCards(services.vocabulary(), services.wording(), zone(), leads(), acts());
        sights = new SessionSights(services, zone());
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        Optional<SessionView> found = SessionSights.named(entering).flatMap(id -> services().views().of(id));
        if (found.isEmpty()) {
            entering.forwardTo(ChambersPage.class);
            return;
        }
        session = found.get().session().id();
        refresh();
    }

    @Override
    Optional<Shown> look() {
        return Optional.ofNullable(session).flatMap(services().views()::of).map(view -> {
            Phase phase = view.session().phase();
            takesBack &= phase == Phase.CHECK_IN;
            ends &= phase == Phase.FIT || phase == Phase.UNFIT;
            List<JointView> joints = phase == Phase.CHECK_IN || phase == Phase.CLOSED || phase == Phase.PURGING
                    ? List.of() : services().joints().ofKit(view.session().kit());
            Optional<MapPicture> picture = JointLines.picture(
                    services().maps().find(view.session().kit()).map(Versioned::state), joints);
            return new Shown(cards.card(view, joints, picture, takesBack, ends), sights.live(view, List.of()));
        });
    }

    @Override
    Verdict does(Asked done, Optional<Signer> signer) {
        return switch (done.act().kind()) {
            case TAKE_BACK -> {
                takesBack = !takesBack;
                yield new Verdict.Silent();
            }
            case END_SESSION, STAY_SHUT -> {
                ends = done.act().kind() == Act.Kind.END_SESSION;
                yield new Verdict.Silent();
            }
            case OPEN_SESSION, LEAVE_OUT, CLOSE_CHAMBER, ABANDON, START_PURGE, STOP_PURGE, OPEN_CHAMBER, SIGN_WELDS,
                    OPEN_OUTER, SHUT_OUTER, PURGE_LOCK, NOTE_CYCLE, OPEN_INNER, SHUT_INNER, CONFIRM_BACK_SIDE, ARM,
                    TACK_FIRST, WELD_NEXT, REPAIR_NEXT -> deeds.act(session, done, signer);
        };
    }

    @Override
    Verdict scans(OwnLabel label, LabelEntry entry) {
        Phase phase = services().sessions().find(session).orElseThrow().state().phase();
        Expected expected = Expected.only(LabelKind.TRAVELLER, LabelKind.BIN, LabelKind.SUPPLY);
        if (expected.refuses(label).isPresent()) {
            return Verdict.refused(services().wording(), List.of(expected.refuses(label).get()));
        }
        if (phase != Phase.CHECK_IN) {
            return new Verdict.Refused("Chamber is shut", "Nothing goes into a closed chamber but through its lock.",
                    "Go to the transfer lock, then scan it.");
        }
        return takesBack ? deeds.takeBack(session, label.id(), entry) : deeds.checkIn(session, label.id(), entry);
    }
}
