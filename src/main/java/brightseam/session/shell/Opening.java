package brightseam.session.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.session.ChamberSession;
import brightseam.session.GasLimits;
import brightseam.session.OpeningFact;
import brightseam.session.SessionCommand;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** Gathers what is asked before the argon flows, before it stops, and before air comes to the joints. */
@Component
final class Opening {

    private final ChamberGear gear;
    private final GasMeters meters;
    private final ObjectProvider<JointsInside> joints;

    Opening(ChamberGear gear, GasMeters meters, ObjectProvider<JointsInside> joints) {
        this.gear = gear;
        this.meters = meters;
        this.joints = joints;
    }

    /** What is known before the chamber of {@code session} is opened. */
    OpeningFact fact(ChamberSession session, boolean cautionsRead, Moment now) {
        return new OpeningFact(joints(session, now), meters.room(session.chamber()), cautionsRead);
    }

    /** What the joints of everything inside have against air. */
    List<Refusal> joints(ChamberSession session, Moment now) {
        return joints(session, session.items().stream().filter(one -> one.isPassedIn() && one.item().hasTraveller())
                .map(one -> one.item().traveller()).sorted().toList(), now);
    }

    /** What the joints of {@code travellers} have against air. */
    List<Refusal> joints(ChamberSession session, Collection<TravellerId> travellers, Moment now) {
        return joints.stream().flatMap(one -> one.objections(session.id(), travellers, now).stream()).distinct()
                .toList();
    }

    /** The start of a purge, with what the register of chambers and argon says of it. */
    SessionCommand purge(ChamberSession session, Origin origin) {
        Optional<ChamberGear.Outlook> outlook = gear.outlook(session.chamber(), origin.at());
        GasLimits limits = gear.limits(session.chamber()).orElseThrow(() ->
                new IllegalStateException("the chamber of " + session.id() + " is not registered"));
        return new SessionCommand.StartPurge(session.id(), outlook.flatMap(ChamberGear.Outlook::argon), limits,
                outlook.flatMap(ChamberGear.Outlook::purge),
                outlook.map(ChamberGear.Outlook::objections).orElse(List.of()), origin);
    }
}
