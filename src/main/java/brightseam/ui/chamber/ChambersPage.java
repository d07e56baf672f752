package brightseam.ui.chamber;

import brightseam.chamber.Chamber;
import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kit.Kit;
import brightseam.people.Person;
import brightseam.people.Role;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.session.ChamberSession;
import brightseam.session.shell.SessionView;
import brightseam.traveller.shell.Actor;
import brightseam.ui.entry.Frames;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The chambers: where a session is open, and where one can be opened for which kit. */
@Route("chamber")
@PageTitle("Chambers")
@RolesAllowed({"FABRICATOR", "LEAD", "INSPECTOR"})
@StyleSheet("context://frontend/bench.css")
@StyleSheet("context://frontend/chamber.css")
class ChambersPage extends Composite<ScreenFrame> implements BeforeEnterObserver {

    private static final int PIN_DIGITS = 4;
    private static final int OVER_SHOWN_MAX = 3;

    private final ChamberServices services;
    private final Frames frames;
    private final Person person;
    private final SessionDeeds deeds;
    private final WorkCard card = new WorkCard("", "Chambers");
    private Optional<Opening> opening = Optional.empty();

    /** A session that is about to be opened. */
    private record Opening(StationId chamber, Optional<Kit> kit) {}

    ChambersPage(ChamberServices services, SignIn signIn, Frames frames, Changes changes) {
        this.services = services;
        this.frames = frames;
        SignedInPerson here = signIn.here().orElseThrow();
        this.person = services.people().find(here.badge()).orElseThrow();
        this.deeds = new SessionDeeds(services, new Actor(here.badge(), here.tablet()));
        Div page = new Div(card);
        page.addClassNames("bench", "chamber");
        getContent().add(page);
        changes.follow(this, streams -> {
            if (opening.isEmpty()) {
                draw();
            }
        });
    }

    @Override
    protected ScreenFrame initContent() {
        return frames.make();
    }

    /** Where there is one chamber and a session in it, that is what is wanted. */
    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        List<ChamberSession> open = services.sessions().open();
        boolean asked = entering.getLocation().getQueryParameters().getParameters().containsKey("all");
        if (open.size() == 1 && services.chambers().all().size() == 1 && !asked) {
            entering.forwardTo("chamber/" + open.getFirst().id());
            return;
        }
        draw();
    }

    private void draw() {
        card.removeAll();
        card.actions();
        opening.ifPresentOrElse(this::drawOpening, this::drawChambers);
    }

    private void drawChambers() {
        card.head("", "Chambers");
        List<Component> places = new ArrayList<>();
        List<SessionView> open = services.views().open();
        open.forEach(view -> places.add(Action.main(words(view), pressed -> go(view.session().id()))));
        List<Chamber> free = services.chambers().all().stream().filter(chamber -> open.stream()
                .noneMatch(view -> view.session().chamber().equals(chamber.station()))).toList();
        if (person.holds(Role.FABRICATOR) || person.holds(Role.LEAD)) {
            free.forEach(chamber -> places.add(Action.main("Open a session at " + chamber.station(), pressed -> {
                opening = Optional.of(new Opening(chamber.station(), Optional.empty()));
                draw();
            })));
        }
        if (places.isEmpty()) {
            card.add(Texts.words("instruction", free.isEmpty() ? "No chamber is registered yet. An administrator or"
                    + " process control registers the chamber and its gear." : "No session is open."));
        }
        card.add(Texts.choices(places));
        List<ChamberSession> over = services.sessions().over(OVER_SHOWN_MAX);
        if (!over.isEmpty()) {
            card.add(new H2("Over"), Texts.choices(over.stream().map(session -> Action.other(session.id() + " · "
                    + session.kit(), pressed -> go(session.id()))).toList()));
        }
    }

    private static String words(SessionView view) {
        return view.session().id() + " at " + view.session().chamber() + ": "
                + StripWriter.stops(view.session().phase()).stream().filter(stop ->
                        stop.standing() == Strip.Standing.NOW || stop.standing() == Strip.Standing.TROUBLE)
                        .map(Strip.Stop::word).findFirst().orElse("");
    }

    private void drawOpening(Opening now) {
        Action back = Action.other("Back", pressed -> {
            opening = Optional.empty();
            draw();
        });
        if (now.kit().isEmpty()) {
            List<Kit> kits = services.kits().open().stream()
                    .filter(kit -> services.sessions().openOfKit(kit.id()).isEmpty()).toList();
            card.head("at " + now.chamber(), "Which kit goes in?");
            card.add(kits.isEmpty() ? Texts.words("instruction", "No kit is open. The lead opens kits on the board.")
                    : Texts.choices(kits.stream().map(kit -> Action.main(kit.id() + " · " + kit.title(), pressed -> {
                        opening = Optional.of(new Opening(now.chamber(), Optional.of(kit)));
                        draw();
                    })).toList()));
            card.actions(back);
            return;
        }
        Kit kit = now.kit().get();
        card.head("at " + now.chamber(), "Open a session of " + kit.id());
        card.instruction(kit.title() + ". The list of what it needs is scanned in next.");
        KeyPad pad = KeyPad.pin("Your PIN opens the session", PIN_DIGITS);
        pad.addEnteredListener(entered -> open(kit.id(), now.chamber(), entered.value()));
        card.add(Texts.beside(pad));
        card.actions(back);
    }

    private void open(KitId kit, StationId chamber, String pin) {
        Verdict verdict = deeds.signed(pin, signer -> deeds.open(kit, chamber, signer, this::go));
        switch (verdict) {
            case Verdict.Accepted accepted -> card.verdict().accepted(accepted.word(), accepted.reason());
            case Verdict.Refused refused ->
                card.verdict().refused(refused.word(), refused.reason(), refused.wayOut());
            case Verdict.Silent silent -> card.verdict().clear();
            case Verdict.HandOver over -> card.verdict().clear();
        }
    }

    private void go(SessionId session) {
        opening = Optional.empty();
        getUI().ifPresent(ui -> ui.navigate("chamber/" + session));
    }
}
