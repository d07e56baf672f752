package brightseam.procedure;

/**
 * One thing that is wrong with a procedure file, where it is and what was expected there.
 *
 * @param file the file's name inside its folder
 * @param line from 1
 * @param column from 1
 * @param found what is there
 * @param expected what belongs there
 */
public record Problem(String file, int line, int column, String found, String expected) {

    /** One line for a person at a terminal: {@code tube.yaml:12:9: found; expected this}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column + ": " + found + "; expected " + expected;
    }
}
