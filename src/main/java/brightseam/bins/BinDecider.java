package brightseam.bins;

import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.kernel.Rules;
import brightseam.procedure.BinClass;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link BinCommand} does to a bin. */
public final class BinDecider {

    private BinDecider() {}

    /** The events that follow from {@code command}, or every {@link BinRefusal} against it. */
    public static Decision<BinEvent> decide(Optional<Bin> bin, BinCommand command) {
        return bin.map(known -> onKnown(known, command)).orElseGet(() -> onUnknown(command));
    }

    private static Decision<BinEvent> onUnknown(BinCommand command) {
        return command instanceof BinCommand.RegisterBin first
                ? Decision.accepted(List.of(new BinEvent.Registered(
                        first.origin(), first.bin(), first.binClass(), first.capacity())))
                : Decision.refused(List.of(new BinRefusal.BinUnknown(command.bin())));
    }

    private static Decision<BinEvent> onKnown(Bin bin, BinCommand command) {
        return switch (command) {
            case BinCommand.RegisterBin ignored ->
                refused(new BinRefusal.BinAlreadyRegistered(bin.id(), bin.binClass()));
            case BinCommand.SetCapacity set -> setCapacity(bin, set);
            case BinCommand.PutIn put -> putIn(bin, put);
            case BinCommand.SetApartInside apart -> setApartInside(bin, apart);
            case BinCommand.TakeOut take -> takeOut(bin, take);
            case BinCommand.CloseBin close -> close(bin, close);
            case BinCommand.OpenBin open -> open(bin, open);
            case BinCommand.ReportSoiled report -> reportSoiled(bin, report);
            case BinCommand.DeclareCleaned clean -> declareCleaned(bin, clean);
            case BinCommand.RetireBin retire -> retire(bin, retire);
        };
    }

    private static Decision<BinEvent> setCapacity(Bin bin, BinCommand.SetCapacity command) {
        BinEvent set = new BinEvent.CapacitySet(command.origin(), bin.id(), command.capacity());
        return inUse(bin).accept(command.capacity().equals(bin.capacity()) ? List.of() : List.of(set));
    }

    private static Decision<BinEvent> putIn(Bin bin, BinCommand.PutIn command) {
        BinEvent event =
                new BinEvent.PutIn(command.origin(), bin.id(), command.traveller(), command.partsClean());
        BinEvent soiled = new BinEvent.Soiled(
                command.origin(), bin.id(), Soiling.UNCLEANED_PARTS, Optional.empty());
        boolean soils = bin.binClass().isClean() && !command.partsClean();
        return inUse(bin)
                .refuseIf(bin.closed(), () -> new BinRefusal.BinClosed(bin.id(), bin.binClass()))
                .refuseIf(bin.fitness() == Fitness.SPENT, () -> new BinRefusal.BagUsed(bin.id()))
                .refuseIf(bin.fitness() == Fitness.SOILED, () -> new BinRefusal.BinNotCleaned(bin.id()))
                .refuseIf(
                        bin.inside().contains(command.traveller()),
                        () -> new BinRefusal.AlreadyInside(bin.id(), command.traveller()))
                .refuseIf(
                        bin.isFull(),
                        () -> new BinRefusal.BinFull(bin.id(), bin.capacity().travellers().orElseThrow()))
                .refuseAll(CapacityRules.broken(bin, command.traveller(), command.sizes()))
                .accept(soils ? List.of(event, soiled) : List.of(event));
    }

    private static Decision<BinEvent> setApartInside(Bin bin, BinCommand.SetApartInside command) {
        return inUse(bin)
                .refuseIf(
                        !bin.inside().contains(command.from()),
                        () -> new BinRefusal.NotInside(bin.id(), command.from()))
                .refuseIf(
                        bin.inside().contains(command.traveller()),
                        () -> new BinRefusal.AlreadyInside(bin.id(), command.traveller()))
                .refuseIf(bin.closed(), () -> new BinRefusal.BinClosed(bin.id(), bin.binClass()))
                .accept(new BinEvent.PutIn(
                        command.origin(), bin.id(), command.traveller(), command.partsClean()));
    }

    private static Decision<BinEvent> takeOut(Bin bin, BinCommand.TakeOut command) {
        return inUse(bin)
                .refuseIf(bin.closed(), () -> new BinRefusal.BinClosed(bin.id(), bin.binClass()))
                .refuseIf(
                        !bin.inside().contains(command.traveller()),
                        () -> new BinRefusal.NotInside(bin.id(), command.traveller()))
                .accept(new BinEvent.TakenOut(command.origin(), bin.id(), command.traveller()));
    }

    private static Decision<BinEvent> close(Bin bin, BinCommand.CloseBin command) {
        return inUse(bin)
                .refuseIf(!bin.binClass().isClean(), () -> new BinRefusal.NoLid(bin.id(), bin.binClass()))
                .refuseIf(bin.closed(), () -> new BinRefusal.BinClosed(bin.id(), bin.binClass()))
                .refuseIf(bin.fitness() == Fitness.SPENT, () -> new BinRefusal.BagUsed(bin.id()))
                .accept(new BinEvent.Closed(command.origin(), bin.id()));
    }

    private static Decision<BinEvent> open(Bin bin, BinCommand.OpenBin command) {
        BinEvent event = new BinEvent.Opened(command.origin(), bin.id(), command.cleanPlace());
        BinEvent soiled = new BinEvent.Soiled(
                command.origin(), bin.id(), Soiling.OPENED_IN_DIRTY_PLACE, Optional.empty());
        return inUse(bin)
                .refuseIf(!bin.closed(), () -> new BinRefusal.BinOpen(bin.id()))
                .accept(command.cleanPlace() ? List.of(event) : List.of(event, soiled));
    }

    private static Decision<BinEvent> reportSoiled(Bin bin, BinCommand.ReportSoiled command) {
        BinEvent soiled = new BinEvent.Soiled(
                command.origin(), bin.id(), Soiling.REPORTED, Optional.of(command.note()));
        return inUse(bin).accept(bin.binClass().isClean() ? List.of(soiled) : List.of());
    }

    private static Decision<BinEvent> declareCleaned(Bin bin, BinCommand.DeclareCleaned command) {
        return inUse(bin)
                .refuseIf(
                        bin.binClass() == BinClass.SEALED_BAG, () -> new BinRefusal.BagNotCleanable(bin.id()))
                .refuseIf(bin.closed(), () -> new BinRefusal.BinClosed(bin.id(), bin.binClass()))
                .refuseIf(!bin.inside().isEmpty(), () -> notEmpty(bin))
                .accept(new BinEvent.Cleaned(command.origin(), bin.id()));
    }

    private static Decision<BinEvent> retire(Bin bin, BinCommand.RetireBin command) {
        return inUse(bin)
                .refuseIf(!bin.inside().isEmpty(), () -> notEmpty(bin))
                .accept(new BinEvent.Retired(command.origin(), bin.id()));
    }

    private static Rules inUse(Bin bin) {
        return Rules.check().refuseIf(bin.retired(), () -> new BinRefusal.BinRetired(bin.id()));
    }

    private static Refusal notEmpty(Bin bin) {
        return new BinRefusal.BinNotEmpty(bin.id(), List.copyOf(bin.inside()));
    }

    private static Decision<BinEvent> refused(Refusal refusal) {
        return Decision.refused(List.of(refusal));
    }
}
