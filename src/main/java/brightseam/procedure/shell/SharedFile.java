package brightseam.procedure.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The files of {@code shared/}, which travel inside the program. */
final class SharedFile {

    private SharedFile() {}

    /**
     * The text of {@code shared/<name>}.
     *
     * @throws IllegalStateException where the program was built without it
     */
    static String text(String name) {
        try (InputStream in = SharedFile.class.getResourceAsStream("/shared/" + name)) {
            if (in == null) {
                throw new IllegalStateException("built without shared/" + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("shared/" + name, unreadable);
        }
    }
}
