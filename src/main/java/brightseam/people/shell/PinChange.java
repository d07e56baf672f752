package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.PersonEvent;
import brightseam.people.Recognition.NotRecognised;
import brightseam.people.Recognition.Recognised;
import org.springframework.stereotype.Service;

/** A person chooses their own PIN, with the one that they have: at the first signing in, once it has ended, any day. */
@Service
public class PinChange {

    private final Authenticator authenticator;
    private final People people;
    private final SignIn signIn;
    private final ShopClock clock;

    PinChange(Authenticator authenticator, People people, SignIn signIn, ShopClock clock) {
        this.authenticator = authenticator;
        this.people = people;
        this.signIn = signIn;
        this.clock = clock;
    }

    /**
     * Puts {@code fresh} in the place of {@code old}, from a view.
     *
     * @return refused as a signature with a wrong PIN is, or for what is wrong with the new one
     * @throws IllegalStateException outside a request of a view
     */
    public Decision<PersonEvent> change(BadgeId badge, String old, String fresh) {
        return change(SignIn.place(SignIn.request()), signIn.tabletLabel(SignIn.request()), badge, old, fresh);
    }

    Decision<PersonEvent> change(String place, String tablet, BadgeId badge, String old, String fresh) {
        return switch (authenticator.choosingPin(place, tablet, badge, old)) {
            case NotRecognised not -> Decision.refused(not.refusals());
            case Recognised known -> people.setPin(
                    new Origin(clock.now(), badge, tablet, clock.isDemo()), badge, fresh);
        };
    }
}
