package brightseam.weld;

import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Syntax;
import java.util.List;
import java.util.Optional;

/**
 * One joint as the weld map plans it.
 *
 * @param number its number on the map, such as {@code J03}
 * @param description what people call it
 * @param jointClass how much rests on it
 * @param parts the two or more pieces that it holds, sorted
 * @param backSide what keeps air from its back side
 * @param backSideReason why the back side may stay open; only there
 * @param filler what is added; empty where the edges alone are melted
 * @param cooling how long it stays in the argon afterwards
 * @param acceptance the key of the table that its colour is judged by
 * @param spot where it lies on the picture; empty where that was not said
 */
public record MapJoint(
        String number,
        String description,
        JointClass jointClass,
        List<JointPart> parts,
        BackSide backSide,
        Optional<String> backSideReason,
        Optional<FillerClass> filler,
        Cooling cooling,
        String acceptance,
        Optional<Spot> spot) {

    /** The longest description and reason. */
    public static final int TEXT_MAX = 80;

    /** The fewest pieces that a joint holds. */
    public static final int PARTS_MIN = 2;

    /** Refuses fewer than two pieces, a piece twice, an open back side without a reason and a reason elsewhere. */
    public MapJoint {
        Syntax.identity("joint number", number);
        description = Syntax.text("description", description, TEXT_MAX);
        parts = parts.stream().sorted().toList();
        if (parts.size() < PARTS_MIN || parts.stream().distinct().count() != parts.size()) {
            throw new IllegalArgumentException("a joint holds two or more pieces, each once");
        }
        backSideReason = backSideReason.map(reason -> Syntax.text("reason", reason, TEXT_MAX));
        if (backSideReason.isPresent() != (backSide == BackSide.OPEN)) {
            throw new IllegalArgumentException("an open back side has a reason, no other has one");
        }
        Syntax.slug("acceptance", acceptance);
    }

    /** The joint of {@code kit} that this plans. */
    public JointId of(KitId kit) {
        return new JointId(kit, number);
    }

    /** The same joint at another place of the picture. */
    public MapJoint at(Optional<Spot> moved) {
        return new MapJoint(number, description, jointClass, parts, backSide, backSideReason, filler, cooling,
                acceptance, moved);
    }
}
