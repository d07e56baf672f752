package brightseam.ui.chamber;

import brightseam.kernel.LabelEntry;
import brightseam.kernel.SessionId;
import brightseam.people.Signer;
import brightseam.people.shell.SignIn;
import brightseam.scan.OwnLabel;
import brightseam.scan.Expected;
import brightseam.scan.LabelKind;
import brightseam.session.shell.SessionView;
import brightseam.ui.desk.Pulse;
import brightseam.ui.entry.Frames;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.Verdict;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;

/** The transfer lock of a session: how it stands, what lies in it, the one next deed. */
@Route("chamber/:session/lock")
@PageTitle("Transfer lock")
@RolesAllowed({"FABRICATOR", "LEAD", "INSPECTOR"})
class LockPage extends ChamberPage implements BeforeEnterObserver {

    private final SessionDeeds deeds;
    private final LockCards cards;
    private final SessionSights sights;
    private SessionId session;

    LockPage(ChamberServices services, SignIn signIn, Frames frames, Changes changes, Pulse pulse) {
        super(services, signIn, frames, changes, pulse);
        deeds = new SessionDeeds(services, actor());
        cards = new LockCards(services.vocabulary(), services.wording(), acts());
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
        return Optional.ofNullable(session).flatMap(services().views()::of)
                .map(view -> new Shown(cards.card(view), sights.live(view, List.of())));
    }

    @Override
    Verdict does(Asked done, Optional<Signer> signer) {
        return deeds.act(session, done, signer);
    }

    @Override
    Verdict scans(OwnLabel label, LabelEntry entry) {
        Expected expected = Expected.only(LabelKind.TRAVELLER, LabelKind.BIN, LabelKind.SUPPLY);
        return expected.refuses(label).map(refusal -> Verdict.refused(services().wording(), List.of(refusal)))
                .orElseGet(() -> deeds.atLock(services().sessions().find(session).orElseThrow().state(), label.id(),
                        entry));
    }
}
