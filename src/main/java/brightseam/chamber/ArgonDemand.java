package brightseam.chamber;

import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import java.time.Instant;
import java.util.Optional;

/**
 * A session that draws argon, running or to come.
 *
 * @param session which one; empty where it has not begun
 * @param kit for which kit
 * @param startsAt when it begins to draw; for a running one, now
 * @param need what it takes from then on
 */
public record ArgonDemand(Optional<SessionId> session, Optional<KitId> kit, Instant startsAt, ArgonNeed.Needed need) {}
