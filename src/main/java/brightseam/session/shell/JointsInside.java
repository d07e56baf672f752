package brightseam.session.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.TravellerId;
import java.util.Collection;
import java.util.List;

/** What the joints in a chamber ask before air comes to them; whoever keeps the joints implements it. */
public interface JointsInside {

    /**
     * What stands against air at the joints of {@code travellers} now: hot ones, arcs without an end. Nothing where all
     * are cold.
     */
    List<Refusal> objections(SessionId session, Collection<TravellerId> travellers, Moment now);
}
