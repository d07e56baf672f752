package brightseam.line;

import static brightseam.people.Role.LEAD;
import static brightseam.people.Role.PROCESS_CONTROL;

import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Decides what a {@link BathCommand} does to a bath. Process control keeps baths; the lead may stop one as well, and
 * allow again what was stopped by hand.
 */
public final class BathDecider {

    private BathDecider() {}

    /** The events that follow from {@code command}, or every {@link BathRefusal} against it. */
    public static Decision<BathEvent> decide(Optional<Bath> bath, BathCommand command) {
        return bath.map(known -> onKnown(known, command)).orElseGet(() -> onUnknown(command));
    }

    private static Decision<BathEvent> onUnknown(BathCommand command) {
        return command instanceof BathCommand.RegisterBath first
                ? signedBy(first.signer(), PROCESS_CONTROL).accept(new BathEvent.Registered(first.origin(),
                        first.station(), first.liquid(), first.volumeLitres(), first.basketsAtOnce(), first.terms(),
                        first.signer()))
                : Decision.refused(List.of(new BathRefusal.BathUnknown(command.station())));
    }

    private static Decision<BathEvent> onKnown(Bath bath, BathCommand command) {
        return switch (command) {
            case BathCommand.RegisterBath ignored ->
                Decision.refused(List.of(new BathRefusal.BathAlreadyRegistered(bath.station())));
            case BathCommand.ChangeTerms c -> signedBy(c.signer(), PROCESS_CONTROL).accept(
                    new BathEvent.TermsChanged(c.origin(), bath.station(), c.terms(), c.reason(), c.signer()));
            case BathCommand.MakeUp c -> signedBy(c.signer(), PROCESS_CONTROL).accept(
                    new BathEvent.MadeUp(c.origin(), bath.station(), bath.fill().number() + 1, c.what(),
                            c.workings(), bath.suspects(), c.signer()));
            case BathCommand.EnterAnalysis c -> analyse(bath, c);
            case BathCommand.RecordAddition c -> signedBy(c.signer(), PROCESS_CONTROL).accept(new BathEvent.Added(
                    c.origin(), bath.station(), bath.fill().number(), c.addition(), c.signer()));
            case BathCommand.TakeIn c -> takeIn(bath, c);
            case BathCommand.LockBath c -> lock(bath, c);
            case BathCommand.UnlockBath c -> unlock(bath, c);
            case BathCommand.FindBad c -> findBad(bath, c);
        };
    }

    private static Decision<BathEvent> analyse(Bath bath, BathCommand.EnterAnalysis c) {
        SortedMap<BathQuantity, BigDecimal> values = BathTerms.withRatio(c.values());
        List<BathQuantity> missing = bath.terms().missing(values);
        Moment earliest = bath.lastAnalysis().map(Analysis::takenAt).orElse(bath.fill().at());
        return signedBy(c.signer(), PROCESS_CONTROL)
                .refuseIf(bath.samples().contains(c.sample()),
                        () -> new BathRefusal.SampleNumberTaken(bath.station(), c.sample()))
                .refuseIf(c.takenAt().isBefore(earliest),
                        () -> new BathRefusal.SampleOutOfOrder(bath.station(), c.takenAt(), earliest))
                .refuseIf(c.takenAt().isAfter(c.origin().at()),
                        () -> new BathRefusal.SampleInTheFuture(bath.station(), c.takenAt()))
                .refuseIf(!missing.isEmpty(), () -> new BathRefusal.AnalysisIncomplete(bath.station(), missing))
                .acceptWith(() -> analysed(bath, c, values));
    }

    private static List<BathEvent> analysed(
            Bath bath, BathCommand.EnterAnalysis c, SortedMap<BathQuantity, BigDecimal> values) {
        List<BathQuantity> outside = bath.terms().outOfLimits(values);
        List<BathEvent> events = new ArrayList<>();
        events.add(new BathEvent.Analysed(c.origin(), bath.station(), bath.fill().number(), c.sample(), c.method(),
                c.takenAt(), values, outside, c.workings(), c.signer()));
        BathLock.Cause cause = BathLock.Cause.OUT_OF_LIMITS;
        boolean locked = bath.lock(cause).isPresent();
        if (outside.isEmpty() && locked) {
            events.add(new BathEvent.Unlocked(
                    c.origin(), bath.station(), cause, Optional.empty(), Optional.empty()));
        } else if (!outside.isEmpty()) {
            if (!locked) {
                events.add(new BathEvent.Locked(
                        c.origin(), bath.station(), cause, Optional.empty(), Optional.empty()));
            }
            events.add(new BathEvent.SuspectsNamed(c.origin(), bath.station(), cause, bath.suspects()));
        }
        return events;
    }

    private static Decision<BathEvent> takeIn(Bath bath, BathCommand.TakeIn c) {
        BathRules rules = new BathRules(bath);
        List<Refusal> against = new ArrayList<>(bath.objections(c.origin().at()));
        rules.occupied(c.basket(), c.stillInside()).ifPresent(against::add);
        if (!against.isEmpty() && !c.cannotWait()) {
            return Decision.refused(against);
        }
        List<BinId> stayed = rules.others(c.basket(), c.stillInside());
        boolean joins = bath.holds(c.basket()) && c.stillInside().contains(c.basket());
        return Decision.accepted(List.of(new BathEvent.TakenIn(c.origin(), bath.station(), bath.fill().number(),
                c.basket(), List.copyOf(c.travellers()), c.areaSquareMetres(), joins, stayed,
                against.stream().map(Refusal::code).distinct().toList())));
    }

    private static Decision<BathEvent> lock(Bath bath, BathCommand.LockBath c) {
        BathLock.Cause cause = BathLock.Cause.BY_HAND;
        return signedBy(c.signer(), PROCESS_CONTROL, LEAD)
                .refuseFor(bath.lock(cause).map(lock -> new BathRefusal.BathLocked(
                        bath.station(), cause, lock.reason().orElse(""), lock.at(), lock.by())))
                .accept(new BathEvent.Locked(c.origin(), bath.station(), cause, Optional.of(c.reason()),
                        Optional.of(c.signer())));
    }

    private static Decision<BathEvent> unlock(Bath bath, BathCommand.UnlockBath c) {
        Optional<BathLock> lock = bath.lock(c.cause());
        if (lock.isEmpty()) {
            return Decision.refused(List.of(new BathRefusal.BathNotLocked(bath.station(), c.cause())));
        }
        boolean byHand = c.cause() == BathLock.Cause.BY_HAND;
        Role[] roles = byHand ? new Role[] {PROCESS_CONTROL, LEAD} : new Role[] {PROCESS_CONTROL};
        boolean proven = byHand || bath.lastGood().filter(good -> !good.takenAt().isBefore(lock.get().at()))
                .isPresent() && c.cause() != BathLock.Cause.OUT_OF_LIMITS;
        return signedBy(c.signer(), roles)
                .refuseIf(!proven, () -> new BathRefusal.GoodAnalysisMissing(bath.station(), lock.get().at()))
                .accept(new BathEvent.Unlocked(c.origin(), bath.station(), c.cause(), Optional.of(c.reason()),
                        Optional.of(c.signer())));
    }

    private static Decision<BathEvent> findBad(Bath bath, BathCommand.FindBad c) {
        BathLock.Cause cause = BathLock.Cause.FOUND_BAD;
        return signedBy(c.signer(), PROCESS_CONTROL, LEAD)
                .refuseFor(bath.lock(cause).map(lock -> new BathRefusal.BathLocked(
                        bath.station(), cause, lock.reason().orElse(""), lock.at(), lock.by())))
                .accept(List.of(
                        new BathEvent.Locked(c.origin(), bath.station(), cause, Optional.of(c.reason()),
                                Optional.of(c.signer())),
                        new BathEvent.SuspectsNamed(c.origin(), bath.station(), cause, bath.suspects())));
    }

    private static Rules signedBy(Signer signer, Role... roles) {
        return Rules.check().refuseIf(Arrays.stream(roles).noneMatch(signer::has),
                () -> new BathRefusal.BathRoleMissing(signer.badge(), List.of(roles)));
    }
}
