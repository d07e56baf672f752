package brightseam.session;

import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What the registers know of a thing that was scanned.
 *
 * @param item the thing
 * @param kit the kit of its traveller; empty for a supply
 * @param grade the grade of its metal; empty for a supply, or where it is not known
 * @param windowLeft what is left of its clean window; empty for a supply, or where no window is open
 * @param permitted whether the chamber lets a supply of its type in that is on no list
 * @param otherSession another open session that it is checked in for
 * @param objections what else stands against it: not ready, expired, contaminated, material, gas
 */
public record ItemFact(Item item, Optional<KitId> kit, Optional<String> grade, Optional<Duration> windowLeft,
        boolean permitted, Optional<SessionId> otherSession, List<Refusal> objections) {

    /** Copies the list. */
    public ItemFact {
        objections = List.copyOf(objections);
    }
}
