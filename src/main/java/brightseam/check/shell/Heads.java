package brightseam.check.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Signed heads in files: notes one behind the other, each followed by a line with a full stop alone; a file with one
 * note and nothing else will do as well.
 */
final class Heads {

    private static final long FILE_BYTES_MAX = 2_000_000_000L;
    private static final int FILES_MAX = 1_000_000;

    private Heads() {}

    /** A note and where it was found. */
    record Found(String place, String note) {}

    /** The whole notes in {@code file}, in order; what was being written when the machine stopped is passed over. */
    static List<Found> inFile(Path file) {
        List<Found> found = new ArrayList<>();
        StringBuilder note = new StringBuilder();
        int line = 0;
        int began = 1;
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            for (String text = in.readLine(); text != null; text = in.readLine()) {
                line++;
                if (text.equals(".")) {
                    found.add(new Found(file.getFileName() + ", the head from line " + began, note.toString()));
                    note.setLength(0);
                    began = line + 1;
                } else {
                    note.append(text).append('\n');
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(file + " cannot be read", failure);
        }
        if (found.isEmpty() && !note.isEmpty()) {
            found.add(new Found(file.getFileName().toString(), note.toString()));
        }
        return found;
    }

    /** The notes in the files of the folder {@code witness}, or in that one file. */
    static List<Found> inWitness(Path witness) {
        if (Files.isRegularFile(witness)) {
            return placed(witness, witness);
        }
        try (Stream<Path> files = Files.walk(witness, 3)) {
            return files.filter(Heads::isReadable).limit(FILES_MAX).sorted()
                    .flatMap(file -> placed(witness, file).stream()).toList();
        } catch (IOException failure) {
            throw new UncheckedIOException("the witness " + witness + " cannot be read", failure);
        }
    }

    private static List<Found> placed(Path witness, Path file) {
        return inFile(file).stream()
                .map(found -> new Found("the witness " + witness + ", " + found.place(), found.note())).toList();
    }

    private static boolean isReadable(Path file) {
        try {
            return Files.isRegularFile(file) && Files.size(file) <= FILE_BYTES_MAX
                    && !file.toString().endsWith(".part");
        } catch (IOException gone) {
            return false;
        }
    }
}
