package brightseam.ledger.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.erdtman.jcs.JsonCanonicalizer;

/**
 * The written forms that the ledger keeps for ever, in {@code src/test/resources/approved/}: one line for each event,
 * its type name, a space and its canonical JSON.
 *
 * <p>To change an event: leave its lines and its record as they are, add a record with the new form to the feature's
 * sealed type and to the table in its Streams class under the next number ({@code bin-closed-up.2}), let evolve answer
 * both, add a sample of it to the test and its line to the file. A line that is there is never edited. What a test
 * wrote is in {@code target/written-events/}, to copy the new lines from.
 */
public final class ApprovedEvents {

    private ApprovedEvents() {}

    /** Fails unless {@code samples} are written as the lines of {@code file}, in order, and read back the same. */
    public static <E> void check(
            String file, Map<String, Class<? extends E>> types, EventCodec<E> codec, List<? extends E> samples) {
        StringBuilder written = new StringBuilder();
        Set<String> covered = new TreeSet<>();
        for (E sample : samples) {
            NewEvent event = codec.write(sample);
            written.append(event.type()).append(' ').append(canonical(event.json())).append('\n');
            covered.add(event.type());
        }
        String approved = approved(file);
        keep(file, written.toString());
        assertEquals(approved, written.toString(), "a written form changed: see " + ApprovedEvents.class.getName());
        assertEquals(new TreeSet<>(types.keySet()), covered, "each type has a sample");
        assertEquals(List.copyOf(samples), approved.lines().map(line -> read(codec, line)).toList());
    }

    private static <E> E read(EventCodec<E> codec, String line) {
        String[] parts = line.split(" ", 2);
        return codec.read(new Entry(1, new StreamName("any/ANY"), 1, parts[0], parts[1], "", ""));
    }

    private static void keep(String file, String written) {
        try {
            Path folder = Files.createDirectories(Path.of("target", "written-events"));
            Files.writeString(folder.resolve(file), written);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String canonical(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedString();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String approved(String file) {
        try (InputStream in = ApprovedEvents.class.getResourceAsStream("/approved/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
