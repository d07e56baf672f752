package brightseam.remote;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.kernel.SystemId;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link SystemCommand} does to a shop system. */
public final class SystemDecider {

    private SystemDecider() {}

    /** The events that follow from {@code command}, or every {@link SystemRefusal} against it. */
    public static Decision<SystemEvent> decide(Optional<ShopSystem> system, SystemCommand command) {
        Rules rules = Rules.check().refuseIf(!command.signer().has(Role.ADMINISTRATOR),
                () -> new SystemRefusal.SystemRoleMissing(command.signer().badge()));
        return switch (command) {
            case SystemCommand.Register asked -> register(rules, system, asked);
            case SystemCommand.MakeToken asked -> known(rules, system, asked).accept(new SystemEvent.TokenMade(
                    asked.origin(), asked.system(), asked.tokenSha256(), asked.signer()));
            case SystemCommand.AnswerFor asked -> isLead(known(rules, system, asked), asked.system(),
                    asked.answering()).accept(new SystemEvent.AnsweredFor(
                            asked.origin(), asked.system(), asked.answering(), asked.signer()));
            case SystemCommand.WithdrawToken asked -> known(rules, system, asked)
                    .refuseIf(system.filter(known -> known.token().isEmpty()).isPresent(),
                            () -> new SystemRefusal.SystemHasNoToken(asked.system()))
                    .accept(new SystemEvent.TokenWithdrawn(
                            asked.origin(), asked.system(), asked.reason(), asked.signer()));
        };
    }

    private static Decision<SystemEvent> register(
            Rules rules, Optional<ShopSystem> system, SystemCommand.Register asked) {
        rules.refuseIf(system.isPresent(), () -> new SystemRefusal.SystemAlreadyRegistered(asked.system()))
                .refuseIf(asked.scopes().contains(Scope.RELEASE) && asked.answering().isEmpty(),
                        () -> new SystemRefusal.NobodyAnswers(asked.system()));
        asked.answering().ifPresent(who -> isLead(rules, asked.system(), who));
        return rules.accept(List.of(new SystemEvent.Registered(asked.origin(), asked.system(), asked.title(),
                asked.scopes(), asked.answering(), asked.signer())));
    }

    private static Rules known(Rules rules, Optional<ShopSystem> system, SystemCommand asked) {
        return rules.refuseIf(system.isEmpty(), () -> new SystemRefusal.SystemUnknown(asked.system()));
    }

    private static Rules isLead(Rules rules, SystemId system, Signer who) {
        return rules.refuseIf(!who.has(Role.LEAD), () -> new SystemRefusal.AnswererIsNoLead(system, who.badge()));
    }
}
