package brightseam.weld;

import brightseam.kernel.Decision;
import brightseam.kernel.KitId;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link WeldMapCommand} does to a weld map. */
public final class WeldMapDecider {

    private WeldMapDecider() {}

    /** The events that follow from {@code command}, or every {@link WeldMapRefusal} against it. */
    public static Decision<WeldMapEvent> decide(Optional<WeldMap> map, WeldMapCommand command) {
        return switch (command) {
            case WeldMapCommand.DrawMap c -> draw(map, c);
            case WeldMapCommand.MoveJoint c -> map.map(known -> move(known, c)).orElseGet(() -> unknown(c));
            case WeldMapCommand.IssueMap c -> map.map(known -> issue(known, c)).orElseGet(() -> unknown(c));
        };
    }

    /** What stands against issuing {@code map} as it is drawn, whoever signs. */
    public static List<WeldMapRefusal> objections(WeldMap map, MapFacts facts) {
        MapSheet sheet = map.draft();
        List<WeldMapRefusal> against = new ArrayList<>();
        if (sheet.joints().isEmpty()) {
            against.add(new WeldMapRefusal.MapHasNoJoints(map.kit()));
        }
        if (!map.isChanged()) {
            against.add(new WeldMapRefusal.MapUnchanged(map.kit(), map.issues().size()));
        }
        sheet.joints().forEach(joint -> against.addAll(objections(map.kit(), joint, facts)));
        if (sheet.pictureSha256().isPresent() && !facts.pictureStored()) {
            against.add(new WeldMapRefusal.MapPictureMissing(map.kit()));
        }
        List<String> dropped = facts.welded().stream().filter(number -> sheet.joint(number).isEmpty()).sorted()
                .toList();
        if (!dropped.isEmpty()) {
            against.add(new WeldMapRefusal.MapDropsWelded(map.kit(), dropped));
        }
        return against;
    }

    private static List<WeldMapRefusal> objections(KitId kit, MapJoint joint, MapFacts facts) {
        List<WeldMapRefusal> against = new ArrayList<>();
        List<JointPart> unknown = joint.parts().stream().filter(part -> !facts.has(part)).toList();
        if (!unknown.isEmpty()) {
            against.add(new WeldMapRefusal.MapPartsUnknown(kit, joint.number(), unknown));
        }
        if (!facts.acceptanceTables().contains(joint.acceptance())) {
            against.add(new WeldMapRefusal.MapAcceptanceUnknown(kit, joint.number(), joint.acceptance()));
        }
        return against;
    }

    private static Decision<WeldMapEvent> unknown(WeldMapCommand command) {
        return Decision.refused(List.of(new WeldMapRefusal.MapUnknown(command.kit())));
    }

    private static Decision<WeldMapEvent> draw(Optional<WeldMap> map, WeldMapCommand.DrawMap c) {
        if (map.isEmpty()) {
            return Decision.accepted(List.of(new WeldMapEvent.Begun(c.origin(), c.kit(), c.sheet())));
        }
        return map.get().draft().equals(c.sheet()) ? Decision.accepted(List.of())
                : Decision.accepted(List.of(new WeldMapEvent.Redrawn(c.origin(), c.kit(), c.sheet())));
    }

    private static Decision<WeldMapEvent> move(WeldMap map, WeldMapCommand.MoveJoint c) {
        return Rules.check()
                .refuseIf(map.draft().joint(c.number()).isEmpty(),
                        () -> new WeldMapRefusal.MapJointUnknown(map.kit(), c.number()))
                .accept(new WeldMapEvent.JointMoved(c.origin(), map.kit(), c.number(), c.spot()));
    }

    private static Decision<WeldMapEvent> issue(WeldMap map, WeldMapCommand.IssueMap c) {
        return Rules.check()
                .refuseIf(!c.signer().has(Role.LEAD),
                        () -> new WeldMapRefusal.MapIssuerNoLead(map.kit(), c.signer().badge()))
                .refuseAll(objections(map, c.facts()))
                .accept(new WeldMapEvent.Issued(c.origin(), map.kit(), map.issues().size() + 1, c.signer()));
    }
}
