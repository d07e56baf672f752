package brightseam.session;

import static brightseam.people.Role.FABRICATOR;
import static brightseam.people.Role.LEAD;

import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Decides whether the chamber is shut and opened. */
final class ChamberDoor {

    /** Air with less oxygen is hazardous: 29 CFR 1910.146. That more is safe is said nowhere. */
    static final BigDecimal ROOM_OXYGEN_PERCENT_MIN = new BigDecimal("19.5");

    private ChamberDoor() {}

    static Decision<SessionEvent> close(ChamberSession s, SessionCommand.CloseChamber c) {
        List<ListLine> unmet = s.list(c.list().needs()).stream().filter(line -> !line.isMet()).toList();
        List<String> inside = s.in(Placed.Where.CHECKED_IN).stream().map(Item::label).sorted().toList();
        return signedBy(SessionDecider.checkingIn(s), c.signer(), FABRICATOR, LEAD)
                .refuseIf(inside.isEmpty(), () -> new SessionRefusal.NothingInside(s.id()))
                .refuseAll(unmet.stream().map(line -> new SessionRefusal.NeedNotMet(
                        line.need().title(), line.need().key(), line.missing())).toList())
                .refuseIf(c.oxygen().isEmpty(), () -> new SessionRefusal.NoOxygenMeter(s.chamber()))
                .refuseFor(c.oxygen().filter(meter -> !meter.troublesInAir().isEmpty()).map(meter ->
                        new SessionRefusal.MeterNotUsable(meter.meter(), meter.troublesInAir())))
                .refuseIf(!c.cautionsRead(), () -> new SessionRefusal.SessionCautionsNotRead(s.id()))
                .acceptWith(() -> SessionDecider.withList(s, c.list(), c, new SessionEvent.ChamberClosed(c.origin(),
                        s.id(), inside, c.oxygen().orElseThrow().meter().value(), c.signer())));
    }

    static Decision<SessionEvent> open(ChamberSession s, SessionCommand.OpenChamber c) {
        return signedBy(SessionDecider.notOver(s), c.signer(), FABRICATOR, LEAD)
                .refuseIf(s.phase() == Phase.CHECK_IN, () -> new SessionRefusal.ChamberStillOpen(s.id()))
                .refuseAll(s.phase().isShut() ? against(s, c.opening()) : List.of())
                .accept(new SessionEvent.Ended(c.origin(), s.id(), c.argonUsed(), c.argonForecastStandardLitres(),
                        c.opening().room().flatMap(MeterFact::value), c.signer()));
    }

    static Decision<SessionEvent> abandon(ChamberSession s, SessionCommand.Abandon c) {
        return signedBy(SessionDecider.notOver(s), c.signer(), LEAD)
                .refuseAll(s.phase().isShut() ? against(s, c.opening()) : List.of())
                .accept(new SessionEvent.Abandoned(c.origin(), s.id(), c.reason(), c.argonUsed(), c.signer()));
    }

    private static List<Refusal> against(ChamberSession s, OpeningFact opening) {
        List<Refusal> all = new ArrayList<>(opening.joints());
        if (s.lock().doors() == Lock.Doors.INNER_OPEN) {
            all.add(new SessionRefusal.InnerDoorOpen(s.lock().since()));
        }
        if (s.lock().doors() == Lock.Doors.OUTER_OPEN) {
            all.add(new SessionRefusal.OuterDoorOpen(s.lock().since()));
        }
        if (!s.inLock().isEmpty()) {
            all.add(new SessionRefusal.ItemsInLock(s.inLock()));
        }
        opening.room().flatMap(ChamberDoor::room).ifPresent(all::add);
        if (!opening.cautionsRead()) {
            all.add(new SessionRefusal.SessionCautionsNotRead(s.id()));
        }
        return all;
    }

    private static Optional<SessionRefusal> room(MeterFact room) {
        if (!room.canBeUsed()) {
            return Optional.of(new SessionRefusal.RoomMonitorNotUsable(
                    room.meter(), room.troubles().isEmpty() ? MeterFact.UNHEARD : room.troubles()));
        }
        return room.value().filter(percent -> percent.compareTo(ROOM_OXYGEN_PERCENT_MIN) < 0).map(percent ->
                new SessionRefusal.RoomOxygenLow(room.meter(), percent, ROOM_OXYGEN_PERCENT_MIN));
    }

    private static Rules signedBy(Rules rules, Signer signer, Role... roles) {
        return rules.refuseIf(Arrays.stream(roles).noneMatch(signer::has),
                () -> new SessionRefusal.SessionRoleMissing(signer.badge(), List.of(roles)));
    }
}
