package brightseam.seal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * A text with signatures under it, in the form of C2SP signed-note: the text, an empty line, and for each signature an
 * em dash, a blank, the key's name, a blank, and base64 of the key's id and the signature.
 *
 * @param text ends with a line feed
 * @param lines one for each signature, at least one
 */
public record SignedNote(String text, List<Line> lines) {

    private static final String DASH = "\u2014 ";
    private static final int LENGTH_MAX = 1_000_000;

    /** A signature: the name of its key, the key's id of four bytes, and the signature's own bytes. */
    public record Line(String name, byte[] id, byte[] signature) {

        String text() {
            byte[] both = Arrays.copyOf(id, id.length + signature.length);
            System.arraycopy(signature, 0, both, id.length, signature.length);
            return DASH + name + " " + Base64.getEncoder().encodeToString(both) + "\n";
        }

        private static Optional<Line> parse(String line) {
            String[] words = line.startsWith(DASH) ? line.substring(DASH.length()).split(" ", -1) : new String[0];
            if (words.length != 2 || words[0].isEmpty()) {
                return Optional.empty();
            }
            try {
                byte[] both = Base64.getDecoder().decode(words[1]);
                return both.length <= NoteVerifier.ID_LENGTH ? Optional.empty() : Optional.of(new Line(words[0],
                        Arrays.copyOf(both, NoteVerifier.ID_LENGTH),
                        Arrays.copyOfRange(both, NoteVerifier.ID_LENGTH, both.length)));
            } catch (IllegalArgumentException notBase64) {
                return Optional.empty();
            }
        }
    }

    /** Copies the list; refuses a text that does not end with a line feed or has other control characters. */
    public SignedNote {
        lines = List.copyOf(lines);
        if (!text.endsWith("\n") || text.chars().anyMatch(c -> c < ' ' && c != '\n')) {
            throw new IllegalArgumentException("a note's text ends with a line feed and has no control characters");
        }
    }

    /** {@code text} signed by every one of {@code keys}, in order. */
    public static SignedNote sign(String text, List<NoteKey> keys) {
        byte[] message = text.getBytes(StandardCharsets.UTF_8);
        return new SignedNote(text, keys.stream()
                .map(key -> new Line(key.verifier().name(), key.verifier().id(), key.sign(message)))
                .toList());
    }

    /** What {@code whole} says; empty where it is no note in the one form that a note has. */
    public static Optional<SignedNote> parse(String whole) {
        int end = whole.lastIndexOf("\n\n");
        if (end < 0 || whole.length() > LENGTH_MAX || !whole.endsWith("\n")) {
            return Optional.empty();
        }
        List<Line> lines = new ArrayList<>();
        for (String line : whole.substring(end + 2, whole.length() - 1).split("\n", -1)) {
            Optional<Line> read = Line.parse(line);
            if (read.isEmpty()) {
                return Optional.empty();
            }
            lines.add(read.get());
        }
        try {
            SignedNote note = new SignedNote(whole.substring(0, end + 1), lines);
            return Optional.of(note).filter(read -> read.whole().equals(whole));
        } catch (IllegalArgumentException notOne) {
            return Optional.empty();
        }
    }

    /** The whole note, text and signatures. */
    public String whole() {
        StringBuilder whole = new StringBuilder(text).append('\n');
        lines.forEach(line -> whole.append(line.text()));
        return whole.toString();
    }

    /**
     * Whether {@code key} signed this. As the form says, lines of other keys are passed over; one that names this key
     * and does not fit makes the note refused.
     */
    public boolean isSignedBy(NoteVerifier key) {
        List<Line> own = lines.stream()
                .filter(line -> line.name().equals(key.name()) && Arrays.equals(line.id(), key.id()))
                .toList();
        byte[] message = text.getBytes(StandardCharsets.UTF_8);
        return !own.isEmpty() && own.stream().allMatch(line -> key.verify(message, line.signature()));
    }
}
