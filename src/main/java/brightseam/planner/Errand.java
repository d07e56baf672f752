package brightseam.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What one person does with a basket without letting go of it: from one place where it can stand by itself to the next.
 *
 * @param number which of the basket's errands, from 0
 * @param pieces what is done, in order, each without a pause behind the one before
 */
public record Errand(int number, List<Piece> pieces) {

    /** A lift and carry to a stage, a lowering into it, an attended hold, a last lifting out. */
    public record Piece(Action.Kind kind, int stage) {}

    /** Copies the pieces. */
    public Errand {
        pieces = List.copyOf(pieces);
    }

    /** The errands of a basket, in order. */
    public static List<Errand> of(Basket basket) {
        List<Errand> errands = new ArrayList<>();
        List<Piece> open = new ArrayList<>();
        for (int stage = 0; stage <= basket.last(); stage++) {
            Stage rule = basket.stages().get(stage);
            if (stage > 0 || !basket.isInStage()) {
                open.add(new Piece(Action.Kind.CARRY, stage));
                if (stage > 0 && rule.waits()) {
                    close(open, errands);
                }
                open.add(new Piece(Action.Kind.LOWER, stage));
            }
            if (rule.isAttended()) {
                open.add(new Piece(Action.Kind.ATTEND, stage));
            } else {
                close(open, errands);
            }
        }
        if (basket.stages().getLast().clearSeconds() > 0) {
            open.add(new Piece(Action.Kind.LIFT_OUT, basket.last()));
        }
        close(open, errands);
        return List.copyOf(errands);
    }

    private static void close(List<Piece> open, List<Errand> errands) {
        if (!open.isEmpty()) {
            errands.add(new Errand(errands.size(), open));
            open.clear();
        }
    }

    /** The first piece. */
    public Piece first() {
        return pieces.getFirst();
    }

    /** The last piece. */
    public Piece last() {
        return pieces.getLast();
    }

    /** The stage whose station the errand begins at; -1 for where the basket waits now. */
    public int fromStage() {
        return first().kind() == Action.Kind.CARRY ? first().stage() - 1 : first().stage();
    }

    /** The stage whose station the errand ends at. */
    public int toStage() {
        return last().stage();
    }

    /** The stage that the basket is left in without hands, if it is left in one. */
    public OptionalInt leavesInStage() {
        return last().kind() == Action.Kind.LOWER ? OptionalInt.of(last().stage()) : OptionalInt.empty();
    }

    /** Whether it ends by setting the basket down before its stage begins. */
    public boolean setsDown() {
        return last().kind() == Action.Kind.CARRY;
    }
}
