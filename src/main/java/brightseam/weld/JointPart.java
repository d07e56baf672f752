package brightseam.weld;

/**
 * One piece that a joint holds.
 *
 * @param lineNumber the line of the kit that it belongs to
 * @param piece its number among the pieces of that line, from 1
 */
public record JointPart(int lineNumber, int piece) implements Comparable<JointPart> {

    /** Refuses numbers below 1. */
    public JointPart {
        if (lineNumber < 1 || piece < 1) {
            throw new IllegalArgumentException("line and piece: from 1");
        }
    }

    @Override
    public int compareTo(JointPart other) {
        int byLine = Integer.compare(lineNumber, other.lineNumber);
        return byLine != 0 ? byLine : Integer.compare(piece, other.piece);
    }

    /** Line and piece with a slash, such as {@code 2/1}: the way a weld map's list writes it. */
    @Override
    public String toString() {
        return lineNumber + "/" + piece;
    }
}
