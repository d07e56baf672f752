package brightseam.kit;

/**
 * One thing that is wrong with a list.
 *
 * @param line of the file, from 1; where a cell has several lines, the one that its row begins on
 * @param column number of the cell in its row, from 1
 * @param found what is there, made harmless: at most 60 characters, unseen ones as points, no formula
 * @param expected what should be there, in words
 */
public record ListProblem(int line, int column, String found, String expected) {

    /** The problem with {@code text}, which may be anything. */
    public static ListProblem of(int line, int column, String text, String expected) {
        return new ListProblem(line, column, Visible.shown(text), expected);
    }
}
