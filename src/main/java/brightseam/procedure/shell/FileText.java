package brightseam.procedure.shell;

import brightseam.procedure.shell.Fault.Place;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The bytes of a file as strict UTF-8, so that the text written back gives the same bytes and the same hash. */
final class FileText {

    /** Sixteen times the largest procedure that ships; anything larger is not a procedure. */
    static final int SIZE_MAX_BYTES = 256 * 1024;

    private FileText() {}

    static String read(byte[] bytes) throws FaultyText {
        if (bytes.length > SIZE_MAX_BYTES) {
            throw new FaultyText(Place.START, "a file of " + bytes.length + " bytes",
                    "at most " + SIZE_MAX_BYTES + " bytes");
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        if (result.isError()) {
            throw new FaultyText(place(out.toString(), out.length()), "bytes that are not UTF-8", "a text in UTF-8");
        }
        return out.toString();
    }

    /** The position of the character at {@code index}. */
    static Place place(String text, int index) {
        String before = text.substring(0, Math.min(index, text.length()));
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        return new Place(line, before.length() - before.lastIndexOf('\n'));
    }

    /** SHA-256 of {@code bytes} as 64 hexadecimal digits. */
    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
