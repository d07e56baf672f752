package brightseam.demo;

import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.session.shell.Sessions;
import brightseam.traveller.shell.Card;
import brightseam.weld.ArcPurpose;
import brightseam.weld.ArcRefusal;
import brightseam.weld.ColoursSeen;
import brightseam.weld.Joint;
import brightseam.weld.JointStanding;
import brightseam.weld.Lighting;
import brightseam.weld.Verdict;
import brightseam.weld.shell.ArcRequest;
import brightseam.weld.shell.JointView;
import brightseam.weld.shell.Joints;
import brightseam.weld.shell.Judging;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** The demo's welder and inspector at the joints of a session, by the same services as everybody. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
public final class Welding {

    /** How long the demo's welder takes for a joint. */
    public static final Duration ARC = Duration.ofMinutes(3);

    private static final DemoPerson WELDER = DemoPerson.RHEA_TOLLAND;
    private static final DemoPerson INSPECTOR = DemoPerson.SANNA_VEIT;
    private static final Duration SETTING_UP = Duration.ofMinutes(4);
    private static final Duration LOOKING = Duration.ofMinutes(2);
    private static final Duration SETTLED_AFTER = Duration.ofMinutes(1);
    private static final Lighting LIGHT = new Lighting(new BigDecimal("1240"), DemoSupplies.LIGHT_METER);

    private final Joints joints;
    private final Sessions sessions;
    private final Watches watches;
    private final Crew crew;
    private final DemoClock clock;

    Welding(Joints joints, Sessions sessions, Watches watches, Crew crew, DemoClock clock) {
        this.joints = joints;
        this.sessions = sessions;
        this.watches = watches;
        this.crew = crew;
        this.clock = clock;
    }

    /** Welds every joint of the session's kit whose pieces are all inside and that was not welded yet. */
    public void weldAll(SessionId session) {
        for (JointView view : joints.ofKit(kit(session))) {
            if (view.standing() == JointStanding.PLANNED && isInside(view)) {
                weld(view.id());
            }
        }
    }

    /** Welds {@code joint}: looks at the back side, strikes the arc, ends it after {@link #ARC}. */
    public void weld(JointId joint) {
        clock.skip(SETTING_UP);
        strike(joint);
        clock.skip(ARC);
        Crew.done(joints.stopArc(crew.actor(WELDER), joint));
        clock.skip(SETTLED_AFTER);
        watches.look();
    }

    /** Strikes the arc on {@code joint}, and lets it burn. */
    public void strike(JointId joint) {
        Crew.done(joints.startArc(crew.actor(WELDER), joint, request(joint)));
    }

    /** Lets time pass until every joint of {@code session} is cold and what its meters say of it is written down. */
    public void cool(SessionId session) {
        joints.ofSession(session).stream().flatMap(view -> view.coolingUntil().stream())
                .map(cold -> cold.since(clock.now())).max(Duration::compareTo).ifPresent(clock::skip);
        clock.skip(SETTLED_AFTER);
        watches.look();
    }

    /** Has the inspector accept every welded joint of {@code kit} that was not judged: silver, in good light. */
    public void judgeAll(KitId kit) {
        for (JointView view : joints.ofKit(kit)) {
            if (view.judgement().isEmpty() && view.joint().filter(Joint::isWelded).isPresent()) {
                clock.skip(LOOKING);
                Crew.done(joints.judge(crew.actor(INSPECTOR), view.id(), new Judging(Verdict.ACCEPT,
                        new ColoursSeen(true, List.of("silver"), Optional.of("light-straw")), List.of(), LIGHT,
                        List.of(), Optional.empty()), crew.signer(INSPECTOR)));
            }
        }
    }

    private boolean isInside(JointView view) {
        return joints.objections(crew.actor(WELDER), view.id(), request(view.id())).stream().noneMatch(against ->
                against instanceof ArcRefusal.PiecesNotInside || against instanceof ArcRefusal.PiecesNotReleased);
    }

    private ArcRequest request(JointId joint) {
        boolean planned = joints.view(joint).orElseThrow().plan().filler().isPresent();
        Optional<TravellerId> filler = planned
                ? joints.fillersInside(joint).stream().map(Card::id).findFirst() : Optional.empty();
        return new ArcRequest(ArcPurpose.WELD, filler, true);
    }

    private KitId kit(SessionId session) {
        return sessions.find(session).orElseThrow().state().kit();
    }
}
