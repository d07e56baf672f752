package brightseam.chamber;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import java.util.List;
import java.util.Optional;

/** Decides what an {@link ArgonCommand} does to a source of argon. */
public final class ArgonDecider {

    private ArgonDecider() {}

    /** The events that follow from {@code command}, or every {@link ArgonRefusal} against it. */
    public static Decision<ArgonEvent> decide(Optional<ArgonSource> source, ArgonCommand command) {
        return source.map(known -> onKnown(known, command)).orElseGet(() -> onUnknown(command));
    }

    private static Decision<ArgonEvent> onUnknown(ArgonCommand command) {
        return command instanceof ArgonCommand.Deliver first
                ? Rules.check()
                        .refuseIf(first.reading().filter(one -> !one.isOf(first.vessel().form())).isPresent(),
                                () -> new ArgonRefusal.ReadingOfAnotherForm(first.supply(), first.vessel().form()))
                        .accept(new ArgonEvent.Delivered(first.origin(), first.supply(), first.vessel(),
                                first.purity(), first.reading()))
                : Decision.refused(List.of(new ArgonRefusal.ArgonUnknown(command.supply())));
    }

    private static Decision<ArgonEvent> onKnown(ArgonSource source, ArgonCommand command) {
        return switch (command) {
            case ArgonCommand.Deliver c ->
                Decision.refused(List.of(new ArgonRefusal.ArgonAlreadyDelivered(source.id())));
            case ArgonCommand.EnterReading c -> Rules.check()
                    .refuseFor(ArgonRules.retired(source))
                    .refuseAll(ArgonRules.reading(source, c.reading(), c.corrects(), c.origin().at()))
                    .accept(new ArgonEvent.Read(c.origin(), source.id(), c.reading(), c.corrects()));
            case ArgonCommand.Connect c -> Rules.check()
                    .refuseAll(ArgonRules.connecting(source, c.chamber(), c.origin().at()))
                    .accept(new ArgonEvent.Connected(c.origin(), source.id(), c.chamber().station(), c.signer()));
            case ArgonCommand.Disconnect c -> Rules.check()
                    .refuseIf(source.connectedTo().filter(c.chamber().station()::equals).isEmpty(),
                            () -> new ChamberRefusal.SourceNotConnected(source.id(), c.chamber().station()))
                    .accept(new ArgonEvent.Disconnected(c.origin(), source.id(), c.chamber().station(), c.signer()));
            case ArgonCommand.DeclareEmpty c -> Rules.check()
                    .refuseFor(ArgonRules.gone(source))
                    .refuseFor(ArgonRules.stillConnected(source))
                    .accept(new ArgonEvent.Emptied(c.origin(), source.id()));
            case ArgonCommand.Retire c -> Rules.check()
                    .refuseFor(ArgonRules.retired(source))
                    .refuseFor(ArgonRules.stillConnected(source))
                    .accept(new ArgonEvent.Retired(c.origin(), source.id(), c.reason()));
        };
    }
}
