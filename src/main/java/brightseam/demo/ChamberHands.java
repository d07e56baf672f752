package brightseam.demo;

import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.procedure.Step;
import brightseam.session.ChamberSession;
import brightseam.session.Item;
import brightseam.session.ListLine;
import brightseam.session.Phase;
import brightseam.session.Placed;
import brightseam.session.shell.LockActions;
import brightseam.session.shell.SessionActions;
import brightseam.session.shell.Sessions;
import brightseam.supply.Supply;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.Disposition;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/**
 * The demo's people at the chamber: take a kit through a session by the same services as everybody, and let the demo
 * clock skip what that takes. Each deed can be asked for by itself; {@link #play} does them all. Not safe for several
 * threads at once, since they share the clock.
 */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
public final class ChamberHands {

    private static final DemoPerson WELDER = DemoPerson.RHEA_TOLLAND;
    private static final DemoPerson INSPECTOR = DemoPerson.SANNA_VEIT;
    private static final DemoPerson LEAD = DemoPerson.BRAM_ODUYA;
    private static final Duration SCANNING = Duration.ofSeconds(12);
    private static final Duration CLOSING = Duration.ofMinutes(4);
    private static final Duration LOOKING = Duration.ofMinutes(5);
    private static final Duration GIVEN_UP_AFTER = Duration.ofHours(6);
    private static final Duration HANDLING = Duration.ofSeconds(40);

    private final SessionActions actions;
    private final LockActions lock;
    private final InspectorActions inspections;
    private final Sessions sessions;
    private final Watches watches;
    private final Welding welding;
    private final Maps maps;
    private final Travellers travellers;
    private final Supplies supplies;
    private final Cupboard cupboard;
    private final Crew crew;
    private final DemoClock clock;

    ChamberHands(SessionActions actions, LockActions lock, InspectorActions inspections, Sessions sessions,
            Watches watches, Welding welding, Maps maps, Travellers travellers, Supplies supplies,
            Cupboard cupboard, Crew crew, DemoClock clock) {
        this.actions = actions;
        this.lock = lock;
        this.inspections = inspections;
        this.sessions = sessions;
        this.watches = watches;
        this.welding = welding;
        this.maps = maps;
        this.travellers = travellers;
        this.supplies = supplies;
        this.cupboard = cupboard;
        this.crew = crew;
        this.clock = clock;
    }

    /**
     * Takes {@code asked} of {@code kit} through a session from check-in to opening; what else the kit needs stays out.
     * A session that is open goes on from where it is. A kit without a weld map gets one that joins like to like.
     *
     * @throws IllegalStateException where something is refused, or the chamber does not become fit
     */
    public SessionId play(KitId kit, Collection<TravellerId> asked) {
        maps.ensure(kit, asked);
        SessionId session = sessions.openOfKit(kit).map(ChamberSession::id).orElseGet(() -> open(kit));
        if (phase(session) == Phase.CHECK_IN) {
            checkIn(session, asked);
            close(session);
        }
        purgeUntilFit(session);
        welding.weldAll(session);
        openChamber(session);
        return session;
    }

    /** Begins a session of {@code kit}. */
    public SessionId open(KitId kit) {
        return Crew.done(actions.open(me(), kit, DemoChamber.STATION, crew.signer(WELDER))).id();
    }

    /** Lays {@code asked} and every supply that the list asks for into the open chamber; the lead lets the rest out. */
    public void checkIn(SessionId session, Collection<TravellerId> asked) {
        for (TravellerId traveller : new TreeSet<>(asked)) {
            if (state(session).placed(traveller.value()).isEmpty()) {
                scan(session, traveller.value());
            }
        }
        for (ListLine line : state(session).list()) {
            if (line.need().kind() == Item.Kind.SUPPLY) {
                fetch(session, line).forEach(label -> scan(session, label.value()));
            }
        }
        state(session).list().stream().filter(line -> !line.isMet()).forEach(line ->
                Crew.done(actions.leaveOut(crew.actor(LEAD), session, line.need().key(),
                        "Goes in with a later session", crew.signer(LEAD))));
    }

    /** Shuts the chamber, with new gloves on. */
    public void close(SessionId session) {
        clock.skip(CLOSING);
        List<Card> inside = state(session).travellersIn(Placed.Where.CHECKED_IN).stream().map(this::card).toList();
        Crew.done(actions.closeChamber(me(), session, true, gloves(inside), crew.signer(WELDER)));
    }

    /**
     * Turns the argon on, where it is off, and waits until the readings say that the chamber is fit to weld.
     *
     * @throws IllegalStateException where that does not come to be in six hours
     */
    public void purgeUntilFit(SessionId session) {
        if (phase(session) == Phase.CLOSED) {
            Crew.done(actions.startPurge(me(), session));
        }
        Duration waited = Duration.ZERO;
        watches.look();
        while (phase(session) != Phase.FIT) {
            if (waited.compareTo(GIVEN_UP_AFTER) > 0) {
                throw new IllegalStateException("does not become fit: " + session);
            }
            clock.skip(LOOKING);
            waited = waited.plus(LOOKING);
            watches.look();
        }
    }

    /** Brings {@code label}, a traveller or a supply, in through the lock. */
    public void passIn(SessionId session, String label) {
        Crew.done(lock.openOuter(me(), session));
        clock.skip(HANDLING);
        Crew.done(lock.putIn(me(), session, label));
        Crew.done(lock.shutOuter(me(), session));
        clock.skip(state(session).lock().need().orElseThrow().sweep().multipliedBy(2));
        List<Card> inbound = state(session).travellersIn(Placed.Where.LOCK_INBOUND).stream().map(this::card).toList();
        Crew.done(lock.openInner(me(), session, true, gloves(inbound), crew.signer(WELDER)));
        clock.skip(HANDLING);
        Crew.done(lock.shutInner(me(), session));
        clock.skip(LOOKING.plus(HANDLING));
        watches.look();
    }

    /** Waits until every joint is cold, and opens the chamber. */
    public void openChamber(SessionId session) {
        welding.cool(session);
        Crew.done(actions.openChamber(me(), session, true, crew.signer(WELDER)));
    }

    /** Has the inspector let stand whatever the meters said of joints of {@code kit}. */
    public void letStand(KitId kit, String reason) {
        for (Card card : travellers.ofKit(kit)) {
            card.traveller().openNonconformances().stream().filter(open -> open.cause().isAboutAJoint())
                    .forEach(open -> Crew.done(inspections.decide(crew.actor(INSPECTOR), card.id(), open.number(),
                            Disposition.USE_AS_IS, Optional.empty(), reason, crew.signer(INSPECTOR))));
        }
    }

    /** The session as it stands. */
    public ChamberSession state(SessionId session) {
        return sessions.find(session).orElseThrow(() -> new IllegalStateException("no session " + session)).state();
    }

    private Phase phase(SessionId session) {
        return state(session).phase();
    }

    private void scan(SessionId session, String label) {
        clock.skip(SCANNING);
        Crew.done(actions.checkIn(me(), session, label));
    }

    /** As many of the shelf as the line lacks, and no more than there are. */
    private List<SupplyId> fetch(SessionId session, ListLine line) {
        Set<String> there = new TreeSet<>();
        state(session).items().forEach(placed -> there.add(placed.item().label()));
        return supplies.all().stream().filter(supply -> supply.type().equals(line.need().key()))
                .filter(supply -> supply.standing().isUsable() && !supply.isPast(Supplies.day(clock.now())))
                .map(Supply::id).filter(label -> !there.contains(label.value())).limit(line.missing()).toList();
    }

    /** The gloves and whatever else the pass-in of these asks for. */
    private List<SupplyId> gloves(List<Card> cards) {
        return cards.stream().flatMap(card -> passIn(card).stream().flatMap(step ->
                cupboard.take(step, List.of(card)).stream())).distinct().toList();
    }

    private static List<Step> passIn(Card card) {
        return card.next() instanceof NextAction.AwaitSession await ? List.of(await.step()) : List.of();
    }

    private Card card(TravellerId id) {
        return travellers.find(id).orElseThrow(() -> new IllegalStateException("no traveller " + id));
    }

    private Actor me() {
        return crew.actor(WELDER);
    }
}
