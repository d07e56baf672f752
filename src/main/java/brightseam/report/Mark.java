package brightseam.report;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.people.Role;
import brightseam.traveller.Meaning;
import java.util.List;
import java.util.Optional;

/**
 * A signature with what 21 CFR 11.50 asks for on display and print: printed name, date and time, meaning; and with what
 * it covers, on what authority, by which factors.
 *
 * @param name as printed beside the signature when it was made
 * @param badge whose badge
 * @param meaning what it says
 * @param at when
 * @param tablet where it was made
 * @param covers what it is under, in words
 * @param actedAs the roles that entitled the signer to this; empty where everybody may
 * @param roles every role held when signing
 * @param stamp the stamp that was used or held
 * @param factors how the person was recognised, as a code
 * @param content the SHA-256 of what was signed; empty for marks that were made before marks were bound
 */
public record Mark(
        String name,
        BadgeId badge,
        Meaning meaning,
        Moment at,
        String tablet,
        String covers,
        List<Role> actedAs,
        List<Role> roles,
        Optional<String> stamp,
        String factors,
        Optional<String> content) {

    /** Copies the lists. */
    public Mark {
        actedAs = List.copyOf(actedAs);
        roles = List.copyOf(roles);
    }

    /** {@code 0f3a 91c2 …}: enough of the content's SHA-256 to compare two prints by eye; the ledger has all of it. */
    public Optional<String> contentMark() {
        return content.map(sha256 -> sha256.substring(0, 4) + " " + sha256.substring(4, 8) + " "
                + sha256.substring(8, 12) + " " + sha256.substring(12, 16));
    }
}
