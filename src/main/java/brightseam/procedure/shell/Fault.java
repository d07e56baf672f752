package brightseam.procedure.shell;

/**
 * What is wrong at one place of a file, before the file's name is put to it.
 *
 * @param place where
 * @param found what is there
 * @param expected what belongs there
 */
record Fault(Place place, String found, String expected) {

    /** A position in a text; both parts count from 1. */
    record Place(int line, int column) {
        static final Place START = new Place(1, 1);
    }
}
