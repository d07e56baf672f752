package brightseam.ui.desk;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.Person;
import brightseam.people.Recognition;
import brightseam.people.Role;
import brightseam.people.shell.Authenticator;
import brightseam.people.shell.People;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.traveller.shell.Actor;
import brightseam.ui.entry.Frames;
import brightseam.ui.parts.ScreenFrame;
import brightseam.words.Wording;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Who sits at this page, what time it is, and how refusals are worded. */
@Component
public class Desk {

    private final SignIn signIn;
    private final Authenticator authenticator;
    private final People people;
    private final ShopClock clock;
    private final Wording wording;
    private final Frames frames;

    Desk(SignIn signIn, Authenticator authenticator, People people, ShopClock clock, Wording wording,
            Frames frames) {
        this.signIn = signIn;
        this.authenticator = authenticator;
        this.people = people;
        this.clock = clock;
        this.wording = wording;
        this.frames = frames;
    }

    /** The clock's moment. */
    public Moment now() {
        return clock.now();
    }

    /** Shop seconds in a real second. */
    public double speed() {
        return clock.speed();
    }

    /** Whether this is the demo shop. */
    public boolean isDemo() {
        return clock.isDemo();
    }

    /** The zone in which the shop reads its clocks. */
    public ZoneId zone() {
        return ZoneId.systemDefault();
    }

    /** An empty frame for the person who is signed in. */
    ScreenFrame frame() {
        return frames.make();
    }

    /** The table of words for refusals. */
    public Wording wording() {
        return wording;
    }

    /**
     * Where what the person does now comes from.
     *
     * @throws IllegalStateException where nobody is signed in
     */
    public Origin origin() {
        return signIn.origin();
    }

    /** Who acts, for the traveller's services. */
    public Actor actor() {
        return new Actor(origin().by(), origin().tablet());
    }

    /** The person who is signed in, as the register knows them now. */
    public Optional<Person> person() {
        return signIn.here().map(SignedInPerson::badge).flatMap(people::find);
    }

    /** Whether the person who is signed in holds one of {@code roles}. */
    public boolean holds(Role... roles) {
        return person().filter(who -> java.util.Arrays.stream(roles).anyMatch(who::holds)).isPresent();
    }

    /** Recognises somebody else at this desk by {@code badge} and {@code pin}, for a signature beside one's own. */
    public Recognition signing(BadgeId badge, String pin) {
        return authenticator.signingBeside(origin().tablet(), badge, pin);
    }

    /** Recognises the person who is signed in by {@code pin}, for a signature. */
    public Recognition signing(String pin) {
        return authenticator.signing(origin().tablet(), origin().by(), pin);
    }
}
