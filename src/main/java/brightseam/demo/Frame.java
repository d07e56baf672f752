package brightseam.demo;

import brightseam.demo.Lots.Lot;
import brightseam.weld.BackSide;
import brightseam.weld.Cooling;
import brightseam.weld.FillerClass;
import brightseam.weld.JointClass;
import brightseam.weld.JointPart;
import brightseam.weld.MapJoint;
import brightseam.weld.MapSheet;
import brightseam.weld.Spot;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is welded in the demo's chamber: the lots of two kits, and the weld maps that hold their pieces together. */
final class Frame {

    /** The kit that is ready for a session: two legs, three cross tubes, two lugs, and its filler. */
    static final List<Lot> ANCHOR = List.of(
            new Lot("HDF-4700-01", "Anchor frame, leg tube", 2, DemoHeat.LEG_TUBE, "TUBE"),
            new Lot("HDF-4700-02", "Anchor frame, cross tube", 3, DemoHeat.LEG_TUBE, "TUBE"),
            new Lot("HDF-4700-10", "Anchor frame, foot lug", 2, DemoHeat.FITTING_BAR, "FITTING"),
            new Lot("HDF-4700-90", "Anchor frame, filler rods", 12, DemoHeat.WIRE, "FILLER"));

    private static final String STANDARD = "iso-9606-5";
    /** The shop's own welding specification, for what carries less. */
    private static final String OF_THE_SHOP = "hdf-ws-07";
    private static final FrameDrawing ANCHOR_DRAWING = new FrameDrawing("HDF-4700 rev. A, anchor frame", 3, true);
    private static final FrameDrawing RING_DRAWING = new FrameDrawing("HDF-2010 rev. A, trial ring, rails", 1, false);

    private Frame() {}

    /** The picture of the anchor frame's map. */
    static byte[] anchorPicture() {
        return ANCHOR_DRAWING.png();
    }

    /** The anchor frame's map: six joints of tube to tube, two of lug to tube, on the picture with that key. */
    static MapSheet anchor(String pictureSha256) {
        List<MapJoint> joints = new ArrayList<>();
        for (int cross = 0; cross < 3; cross++) {
            for (int leg = 0; leg < 2; leg++) {
                joints.add(new MapJoint(number(joints.size()), "Cross tube %d to leg %d".formatted(cross + 1, leg + 1),
                        cross == 1 ? JointClass.B : JointClass.A,
                        List.of(new JointPart(1, leg + 1), new JointPart(2, cross + 1)),
                        cross == 1 ? BackSide.VENTED : BackSide.PURGED, Optional.empty(),
                        Optional.of(FillerClass.ERTI_9), cooling(6), cross == 1 ? OF_THE_SHOP : STANDARD,
                        spot(ANCHOR_DRAWING.joint(cross, leg == 0))));
            }
        }
        for (int leg = 0; leg < 2; leg++) {
            joints.add(new MapJoint(number(joints.size()), "Lug %d under leg %d".formatted(leg + 1, leg + 1),
                    JointClass.A, List.of(new JointPart(1, leg + 1), new JointPart(3, leg + 1)), BackSide.VENTED,
                    Optional.empty(),
                    Optional.of(FillerClass.ERTI_9), cooling(8), STANDARD, spot(ANCHOR_DRAWING.lug(leg == 0))));
        }
        return new MapSheet("HDF-4700 rev. A, anchor frame", Optional.of(pictureSha256), joints);
    }

    /** The picture of the trial ring's map. */
    static byte[] ringPicture() {
        return RING_DRAWING.png();
    }

    /** The trial ring's map: its two rails, joined at either end of a bridge between them. */
    static MapSheet ring(String pictureSha256) {
        List<MapJoint> joints = new ArrayList<>();
        List<JointPart> rails = List.of(new JointPart(1, 1), new JointPart(1, 2));
        for (boolean left : new boolean[] {true, false}) {
            joints.add(new MapJoint(number(joints.size()), left ? "Rails, near end" : "Rails, far end", JointClass.B,
                    rails, BackSide.VENTED, Optional.empty(), Optional.of(FillerClass.ERTI_9), cooling(5), OF_THE_SHOP,
                    spot(RING_DRAWING.joint(0, left))));
        }
        return new MapSheet("HDF-2010 rev. A, trial ring", Optional.of(pictureSha256), joints);
    }

    /**
     * Joints that hold {@code parts} together one after another; a single one is joined to {@code neighbour}.
     *
     * @throws IllegalStateException for a single piece without a neighbour
     */
    static List<MapJoint> chain(List<JointPart> parts, Optional<JointPart> neighbour, boolean filler, int before) {
        List<JointPart> row = new ArrayList<>(parts.size() > 1 ? parts : List.of(neighbour.orElseThrow(() ->
                new IllegalStateException("one piece alone has no joint: " + parts)), parts.getFirst()));
        List<MapJoint> joints = new ArrayList<>();
        for (int next = 1; next < row.size(); next++) {
            List<JointPart> pair = List.of(row.get(next - 1), row.get(next));
            joints.add(new MapJoint(number(before + joints.size()), "Pieces " + pair.get(0) + " and " + pair.get(1),
                    JointClass.C, pair, BackSide.VENTED, Optional.empty(),
                    filler ? Optional.of(FillerClass.ERTI_9) : Optional.empty(), cooling(5), OF_THE_SHOP,
                    Optional.empty()));
        }
        return joints;
    }

    private static String number(int before) {
        return "J%02d".formatted(before + 1);
    }

    private static Cooling cooling(int minutes) {
        return new Cooling(Duration.ofMinutes(minutes), "below 260 °C", "invented for the demo");
    }

    private static Optional<Spot> spot(int[] thousandths) {
        return Optional.of(new Spot(thousandths[0], thousandths[1]));
    }
}
