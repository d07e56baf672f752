package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import java.io.Serializable;
import org.springframework.security.core.AuthenticatedPrincipal;

/**
 * Who is signed in, in this session.
 *
 * @param badgeLabel the badge, as text so that a session may be written to disk
 * @param displayName as shown on the screen
 * @param tablet the label of the tablet
 */
public record SignedInPerson(String badgeLabel, String displayName, String tablet)
        implements AuthenticatedPrincipal, Serializable {

    /** The badge. */
    public BadgeId badge() {
        return new BadgeId(badgeLabel);
    }

    @Override
    public String getName() {
        return badgeLabel;
    }
}
