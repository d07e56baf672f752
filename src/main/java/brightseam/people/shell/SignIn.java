package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.PersonEvent.SignedIn;
import brightseam.people.Recognition;
import brightseam.people.Recognition.NotRecognised;
import brightseam.people.Recognition.Recognised;
import brightseam.people.Signer;
import com.vaadin.flow.server.VaadinServletRequest;
import com.vaadin.flow.server.VaadinServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Service;

/**
 * Signs people in and out on the tablet that the current request comes from.
 *
 * <p>A view calls {@link #signIn(BadgeId, String)} or {@link #signOut()} and then has the browser load a page afresh
 * ({@code getPage().setLocation}), since the session is a new one.
 */
@Service
public class SignIn {

    /** Written as the tablet of a refused try on a tablet that nobody ever signed in on. */
    private static final String NEW_TABLET = "new tablet";

    private final Authenticator authenticator;
    private final PersonReader people;
    private final PersonJournal journal;
    private final Tablets tablets;
    private final ShopClock clock;

    SignIn(Authenticator authenticator, PersonReader people, PersonJournal journal, Tablets tablets,
            ShopClock clock) {
        this.authenticator = authenticator;
        this.people = people;
        this.journal = journal;
        this.tablets = tablets;
        this.clock = clock;
    }

    /**
     * Signs in from a view; whoever was signed in on the tablet is not any more, the open card stays open.
     *
     * @throws IllegalStateException outside a request of a view
     */
    public Recognition signIn(BadgeId badge, String pin) {
        return signIn(badge, pin, request(), response());
    }

    /** As {@link #signIn(BadgeId, String)}, from a plain request. */
    public Recognition signIn(
            BadgeId badge, String pin, HttpServletRequest request, HttpServletResponse response) {
        Optional<Tablet> known = tablet(request);
        Recognition recognition = authenticator.signingIn(place(request), tabletLabel(request), badge, pin);
        return switch (recognition) {
            case NotRecognised refused -> refused;
            case Recognised recognised -> {
                String label = enrol(known, request, response);
                begin(recognised.signer(), label, request, response);
                yield recognised;
            }
        };
    }

    /** What tries are counted by where nobody is signed in. */
    static String place(HttpServletRequest request) {
        return "address " + request.getRemoteAddr();
    }

    /** The label of the tablet that {@code request} comes from, or words where nobody ever signed in on it. */
    String tabletLabel(HttpServletRequest request) {
        return tablet(request).map(Tablet::label).orElse(NEW_TABLET);
    }

    /** Signs out from a view. Send the browser to {@code /sign-in} in the same request. */
    public void signOut() {
        signOut(request());
    }

    /** As {@link #signOut()}, from a plain request. */
    public void signOut(HttpServletRequest request) {
        here().map(SignedInPerson::tablet).ifPresent(tablets::signOut);
        Sessions.end(request);
    }

    /** Who is signed in, in this session. */
    public Optional<SignedInPerson> here() {
        return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication())
                .map(authentication -> authentication.getPrincipal())
                .filter(SignedInPerson.class::isInstance)
                .map(SignedInPerson.class::cast);
    }

    /**
     * The origin of whatever the person who is signed in does now.
     *
     * @throws IllegalStateException where nobody is signed in
     */
    public Origin origin() {
        SignedInPerson person = here().orElseThrow(() -> new IllegalStateException("nobody is signed in"));
        return new Origin(clock.now(), person.badge(), person.tablet(), clock.isDemo());
    }

    /** The tablet that {@code request} comes from, where somebody ever signed in on it. */
    public Optional<Tablet> tablet(HttpServletRequest request) {
        return TabletCookie.token(request).flatMap(tablets::byToken);
    }

    /**
     * Makes the session agree with the tablet: whoever is signed in on it is signed in here, after a restart of the
     * server too; whoever was signed out, replaced or idle too long is not.
     *
     * @param touched whether the request counts as somebody touching the tablet
     * @param begins whether a session may begin with this request; where not, whoever has none stays nobody
     */
    public void agree(HttpServletRequest request, HttpServletResponse response, boolean touched, boolean begins) {
        Optional<SignedInPerson> here = here();
        Optional<Tablet> tablet = here.map(SignedInPerson::tablet).flatMap(tablets::find).or(() -> tablet(request));
        Optional<BadgeId> present = tablet.flatMap(tablets::present);
        if (here.isPresent() && !present.equals(here.map(SignedInPerson::badge))) {
            Sessions.end(request);
            here = Optional.empty();
        }
        if (present.isEmpty()) {
            tablet.filter(idle -> idle.badge().isPresent()).map(Tablet::label).ifPresent(tablets::signOut);
            return;
        }
        if (here.isEmpty() && begins) {
            restore(present.get(), tablet.get(), request, response);
        }
        if (touched) {
            tablets.touch(tablet.get());
        }
    }

    private void restore(
            BadgeId badge, Tablet tablet, HttpServletRequest request, HttpServletResponse response) {
        boolean itIsTheTablet = tablet(request).map(Tablet::label).filter(tablet.label()::equals).isPresent();
        if (itIsTheTablet) {
            people.find(badge).ifPresent(person ->
                    Sessions.begin(Signer.of(person, "tablet"), tablet.label(), request, response));
        }
    }

    private void begin(Signer signer, String label, HttpServletRequest request, HttpServletResponse response) {
        Origin origin = new Origin(clock.now(), signer.badge(), label, clock.isDemo());
        journal.note(new SignedIn(origin, signer.badge()));
        tablets.signIn(label, signer.badge());
        Sessions.begin(signer, label, request, response);
    }

    /** A cookie that somebody copied off the tablet is worth nothing once the next person signs in on it. */
    private String enrol(Optional<Tablet> known, HttpServletRequest request, HttpServletResponse response) {
        String token = TabletToken.random();
        String label = known.map(Tablet::label).orElseGet(() -> tablets.enrol(token));
        known.ifPresent(tablet -> tablets.changeToken(tablet.label(), token));
        TabletCookie.put(request, response, token);
        return label;
    }

    static HttpServletRequest request() {
        return Optional.ofNullable(VaadinServletRequest.getCurrent())
                .map(VaadinServletRequest::getHttpServletRequest)
                .orElseThrow(() -> new IllegalStateException("no request of a view"));
    }

    private static HttpServletResponse response() {
        return Optional.ofNullable(VaadinServletResponse.getCurrent())
                .map(VaadinServletResponse::getHttpServletResponse)
                .orElseThrow(() -> new IllegalStateException("no response to a view"));
    }
}
