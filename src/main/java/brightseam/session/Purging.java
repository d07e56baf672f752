package brightseam.session;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import java.util.List;
import java.util.Optional;

/** Decides on the chamber's gas. */
final class Purging {

    private Purging() {}

    /** What the register of argon says by itself is told in its words alone. */
    static Decision<SessionEvent> start(ChamberSession s, SessionCommand.StartPurge c) {
        boolean unexplained = c.objections().isEmpty();
        return shut(s)
                .refuseIf(s.phase().isPurged(), () -> new SessionRefusal.PurgeRunning(
                        s.id(), s.gas().purge().orElseThrow().startedAt()))
                .refuseIf(unexplained && c.argon().isEmpty(), () -> new SessionRefusal.NoArgonConnected(s.chamber()))
                .refuseFor(c.argon().filter(argon -> unexplained && !argon.suffices())
                        .map(argon -> new SessionRefusal.ArgonTooLittle(
                                argon.supply(), argon.leftStandardLitres(), argon.neededStandardLitres())))
                .refuseFor(c.argon().filter(argon -> argon.oxygenPpm().compareTo(c.limits().oxygenPpmMax()) >= 0)
                        .map(argon -> new SessionRefusal.ArgonTooImpure(
                                argon.supply(), argon.oxygenPpm(), c.limits().oxygenPpmMax())))
                .refuseFor(c.argon().flatMap(argon -> tooWet(argon, c.limits())))
                .refuseAll(c.objections())
                .acceptWith(() -> List.of(new SessionEvent.PurgeStarted(
                        c.origin(), s.id(), c.argon().orElseThrow(), c.limits(), c.forecast())));
    }

    static Decision<SessionEvent> stop(ChamberSession s, SessionCommand.StopPurge c) {
        return shut(s)
                .refuseIf(s.phase() == Phase.CLOSED, () -> new SessionRefusal.NoPurgeRunning(s.id()))
                .refuseAll(c.objections())
                .accept(new SessionEvent.PurgeStopped(c.origin(), s.id(), c.reason()));
    }

    /** Written down is only what changes whether an arc may be struck; why it may not be yet is told, not stored. */
    static Decision<SessionEvent> note(ChamberSession s, SessionCommand.NoteGas c) {
        if (!s.phase().isPurged()) {
            return Decision.accepted(List.of());
        }
        return switch (c.fitness()) {
            case Fitness.Fit fit -> Decision.accepted(s.phase() == Phase.FIT ? List.of()
                    : List.of(new SessionEvent.FoundFit(
                            c.origin(), s.id(), fit.since(), fit.oxygenPpm(), fit.moisturePpm())));
            case Fitness.NotFit not -> Decision.accepted(s.phase() != Phase.FIT ? List.of()
                    : List.of(new SessionEvent.FoundUnfit(
                            c.origin(), s.id(), not.reasons().stream().map(Broken::of).toList())));
        };
    }

    /** No purge can make the gas better than what flows in. */
    private static Optional<SessionRefusal> tooWet(ArgonFact argon, GasLimits limits) {
        return limits.moisturePpmMax().filter(most -> argon.moisturePpm().compareTo(most) >= 0)
                .map(most -> new SessionRefusal.ArgonTooWet(argon.supply(), argon.moisturePpm(), most));
    }

    private static Rules shut(ChamberSession s) {
        return SessionDecider.notOver(s).refuseIf(s.phase() == Phase.CHECK_IN,
                () -> new SessionRefusal.ChamberStillOpen(s.id()));
    }
}
