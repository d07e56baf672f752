package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.traveller.TravellerCommand.CloseBin;
import brightseam.traveller.TravellerCommand.OpenBin;
import brightseam.traveller.TravellerCommand.PutInBin;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Which bin the pieces may be in. */
final class BinRules {

    private final Traveller traveller;
    private final Procedure procedure;

    BinRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    Decision<TravellerEvent> putIn(PutInBin c) {
        List<BinClass> allowed = allowed();
        Optional<StepRun> holding = traveller.runs().values().stream().filter(StepRun::isHolding).findFirst();
        return Rules.check()
                .refuseFor(holding.map(run -> new TravellerRefusal.HoldStillRunning(run.step())))
                .refuseIf(!allowed.contains(c.bin().binClass()), () -> new TravellerRefusal.WrongBinClass(
                        c.bin().id(), c.bin().binClass(), allowed))
                .refuseIf(c.bin().closed(), () -> new TravellerRefusal.BinIsClosed(c.bin().id()))
                .refuseIf(isInside(c), () -> new TravellerRefusal.AlreadyInThatBin(c.bin().id()))
                .acceptWith(() -> List.of(new TravellerEvent.PutInBin(
                        c.origin(), c.bin().id(), c.bin().binClass(), c.bin().closed())));
    }

    Decision<TravellerEvent> close(CloseBin c) {
        return traveller.placement()
                .map(where -> Rules.check()
                        .refuseIf(where.closed(), () -> new TravellerRefusal.BinIsClosed(where.bin()))
                        .<TravellerEvent>acceptWith(() ->
                                List.of(new TravellerEvent.BinClosed(c.origin(), where.bin()))))
                .orElseGet(this::inNoBin);
    }

    Decision<TravellerEvent> open(OpenBin c) {
        return traveller.placement()
                .map(where -> Rules.check()
                        .refuseIf(!where.closed(), () -> new TravellerRefusal.BinIsOpen(where.bin()))
                        .<TravellerEvent>acceptWith(() ->
                                List.of(new TravellerEvent.BinOpened(c.origin(), where.bin()))))
                .orElseGet(this::inNoBin);
    }

    /** Classes that the pieces may lie in now: those of the step at hand; cleaned parts go into clean ones only. */
    List<BinClass> allowed() {
        boolean clean = traveller.window() instanceof Window.Open;
        Optional<Step> begun = traveller.currentStep().filter(traveller.runs()::containsKey).map(procedure::step);
        Optional<Step> next = new Course(traveller, procedure).startable();
        return Stream.concat(begun.stream(), next.stream())
                .map(Step::bins).map(BinRules::anyWhereNoneIsNamed).flatMap(Collection::stream)
                .filter(binClass -> !clean || binClass.isClean())
                .distinct().sorted().toList();
    }

    private static Set<BinClass> anyWhereNoneIsNamed(Set<BinClass> named) {
        return named.isEmpty() ? EnumSet.allOf(BinClass.class) : named;
    }

    /** Why the pieces' bin does not suit the clean window that {@code step} opens, where it does not. */
    Optional<TravellerRefusal> uncleanAfter(Step step) {
        return traveller.placement()
                .filter(where -> procedure.window().openedBy().equals(step.id()) && !where.binClass().isClean())
                .map(where -> new TravellerRefusal.WrongBinClass(where.bin(), where.binClass(), cleanOf(step)));
    }

    /** The clean ones out of the step's classes. */
    static List<BinClass> cleanOf(Step step) {
        return anyWhereNoneIsNamed(step.bins()).stream().filter(BinClass::isClean).sorted().toList();
    }

    /** Why the pieces' bin does not suit {@code step}, where it does not. */
    Optional<TravellerRefusal> unfitFor(Step step) {
        List<BinClass> wanted = step.bins().stream().sorted().toList();
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return traveller.placement()
                .map(where -> wanted.contains(where.binClass()) ? Optional.<TravellerRefusal>empty()
                        : Optional.<TravellerRefusal>of(new TravellerRefusal.WrongBinClass(
                                where.bin(), where.binClass(), wanted)))
                .orElseGet(() -> Optional.of(new TravellerRefusal.InNoBin(wanted)));
    }

    private boolean isInside(PutInBin c) {
        return traveller.placement().filter(where -> where.bin().equals(c.bin().id())).isPresent();
    }

    private Decision<TravellerEvent> inNoBin() {
        return Decision.refused(List.of(new TravellerRefusal.InNoBin(allowed())));
    }
}
