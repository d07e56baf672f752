package brightseam.session.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Versioned;
import brightseam.session.ChamberSession;
import brightseam.session.Fitness;
import brightseam.session.FitnessToWeld;
import brightseam.session.GasLimits;
import brightseam.session.MeterFact;
import brightseam.session.Placed.Where;
import brightseam.session.SessionRefusal;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Says whether the gas of a session is fit to weld, by the readings of this moment and not by what was noted. */
@Service
public class SessionGas {

    private final Sessions sessions;
    private final ChamberGear gear;
    private final GasMeters meters;
    private final ShopClock clock;

    SessionGas(Sessions sessions, ChamberGear gear, GasMeters meters, ShopClock clock) {
        this.sessions = sessions;
        this.gear = gear;
        this.meters = meters;
        this.clock = clock;
    }

    /** The session by name, for whoever welds in it. */
    public Optional<SessionFact> fact(SessionId session) {
        return sessions.find(session).map(Versioned::state).map(this::fact);
    }

    /** The open session of {@code kit}. */
    public Optional<SessionFact> ofKit(KitId kit) {
        return sessions.openOfKit(kit).map(this::fact);
    }

    /** The open session at {@code chamber}. */
    public Optional<SessionFact> at(StationId chamber) {
        return sessions.openAt(chamber).map(this::fact);
    }

    /** What the readings say of the gas of {@code session} at {@code now}. */
    Fitness judge(ChamberSession session, Moment now) {
        Optional<GasLimits> limits = session.gas().limits();
        if (!session.phase().isPurged() || limits.isEmpty()) {
            return new Fitness.NotFit(List.of(new SessionRefusal.NotPurged(session.id())));
        }
        StationId chamber = session.chamber();
        return FitnessToWeld.judge(chamber, limits.get(), meters.oxygenLately(chamber, limits.get(), now),
                meters.moistureLately(chamber, limits.get(), now), now);
    }

    private SessionFact fact(ChamberSession session) {
        Moment now = clock.now();
        List<Refusal> unfit = judge(session, now).reasons();
        return new SessionFact(session.id(), session.kit(), session.chamber(), session.lockStation(),
                session.phase(), unfit, session.gas().limits(), session.gas().purge().map(purge -> purge.argon()),
                gear.outlook(session.chamber(), now).flatMap(ChamberGear.Outlook::argon),
                meters.oxygen(session.chamber()).map(MeterFact::meter),
                meters.moisture(session.chamber()).map(MeterFact::meter),
                session.travellersIn(Where.INSIDE), session.in(Where.INSIDE));
    }
}
