package brightseam.weld;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import java.util.List;

/** The rules that stand against a {@link WeldMapCommand}. */
public sealed interface WeldMapRefusal extends Refusal {

    /** Whose map. */
    KitId kit();

    @Override
    default String code() {
        return switch (this) {
            case MapUnknown ignored -> "weld-map-unknown";
            case MapJointUnknown ignored -> "weld-map-joint-unknown";
            case MapHasNoJoints ignored -> "weld-map-has-no-joints";
            case MapUnchanged ignored -> "weld-map-unchanged";
            case MapPartsUnknown ignored -> "weld-map-parts-unknown";
            case MapAcceptanceUnknown ignored -> "weld-map-acceptance-unknown";
            case MapPictureMissing ignored -> "weld-map-picture-missing";
            case MapDropsWelded ignored -> "weld-map-drops-welded";
            case MapIssuerNoLead ignored -> "weld-map-issuer-no-lead";
        };
    }

    /** The kit has no map. */
    record MapUnknown(KitId kit) implements WeldMapRefusal {}

    /** The draft has no such joint. */
    record MapJointUnknown(KitId kit, String number) implements WeldMapRefusal {}

    /** A map without joints plans nothing. */
    record MapHasNoJoints(KitId kit) implements WeldMapRefusal {}

    /** It says what the last issue says. */
    record MapUnchanged(KitId kit, int issue) implements WeldMapRefusal {}

    /** The joint holds pieces that the kit has not. */
    record MapPartsUnknown(KitId kit, String number, List<JointPart> parts) implements WeldMapRefusal {
        /** Copies the list. */
        public MapPartsUnknown {
            parts = List.copyOf(parts);
        }
    }

    /** The joint is to be judged by a table that the shop has not. */
    record MapAcceptanceUnknown(KitId kit, String number, String acceptance) implements WeldMapRefusal {}

    /** The map's picture is not among the stored ones. */
    record MapPictureMissing(KitId kit) implements WeldMapRefusal {}

    /** Joints that were welded already are not on it any more. */
    record MapDropsWelded(KitId kit, List<String> numbers) implements WeldMapRefusal {
        /** Copies the list. */
        public MapDropsWelded {
            numbers = List.copyOf(numbers);
        }
    }

    /** Whoever signs is not a lead. */
    record MapIssuerNoLead(KitId kit, BadgeId badge) implements WeldMapRefusal {}
}
