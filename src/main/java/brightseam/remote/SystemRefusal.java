package brightseam.remote;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SystemId;

/** The rules that stand against what is asked of, or by, a shop system. */
public sealed interface SystemRefusal extends Refusal {

    @Override
    default String code() {
        return switch (this) {
            case SystemUnknown ignored -> "system-unknown";
            case SystemAlreadyRegistered ignored -> "system-already-registered";
            case SystemRoleMissing ignored -> "system-role-missing";
            case NobodyAnswers ignored -> "system-nobody-answers";
            case AnswererIsNoLead ignored -> "system-answerer-is-no-lead";
            case SystemHasNoToken ignored -> "system-has-no-token";
            case SystemMayNot ignored -> "system-may-not";
            case KeyUsedOtherwise ignored -> "release-key-used";
            case QuantityDiffers ignored -> "release-quantity-differs";
        };
    }

    /** No system is registered under the name. */
    record SystemUnknown(SystemId system) implements SystemRefusal {}

    /** The name is taken. */
    record SystemAlreadyRegistered(SystemId system) implements SystemRefusal {}

    /** Who signs is no administrator. */
    record SystemRoleMissing(BadgeId badge) implements SystemRefusal {}

    /** It is to release travellers and no lead answers for it. */
    record NobodyAnswers(SystemId system) implements SystemRefusal {}

    /** Who answers for it is no lead of the shop, or not any more. */
    record AnswererIsNoLead(SystemId system, BadgeId badge) implements SystemRefusal {}

    /** There is no token to withdraw. */
    record SystemHasNoToken(SystemId system) implements SystemRefusal {}

    /** It was not given that scope. */
    record SystemMayNot(SystemId system, Scope scope) implements SystemRefusal {}

    /** The system used the key before, for a release of something else. */
    record KeyUsedOtherwise(SystemId system, String key) implements SystemRefusal {}

    /** The parts list of the kit has another number of pieces in that line. */
    record QuantityDiffers(KitId kit, String partNumber, int asked, int listed) implements SystemRefusal {}
}
