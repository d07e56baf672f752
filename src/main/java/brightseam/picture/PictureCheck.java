package brightseam.picture;

import brightseam.kernel.Decision;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Looks at the bytes of what is said to be a picture. Only headers are read: nothing is unpacked, so a small file that
 * would unpack to gigabytes is refused by the size that it states.
 */
public final class PictureCheck {

    /** The most bytes of a picture: a photograph of 12 million pixels has about half of it (common practice). */
    public static final int BYTES_MAX = 8 * 1024 * 1024;

    /** The longest edge, in pixels. */
    public static final int EDGE_PIXELS_MAX = 10_000;

    /** The most pixels: unpacked they are 200 MB at four bytes each. */
    public static final long PIXELS_MAX = 50_000_000L;

    private static final byte[] PNG_SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte[] PNG_HEADER = "IHDR".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] PNG_END = "IEND".getBytes(StandardCharsets.US_ASCII);
    private static final int PNG_CHUNK_FRAME = 12;

    private PictureCheck() {}

    private record Size(PictureType type, int width, int height) {}

    /** The picture that {@code bytes} are, or what stands against it. */
    public static Decision<Picture> check(byte[] bytes) {
        if (bytes.length > BYTES_MAX) {
            return Decision.refused(List.of(new PictureRefusal.PictureTooHeavy(bytes.length, BYTES_MAX)));
        }
        Optional<Size> size = png(bytes).or(() -> jpeg(bytes));
        if (size.isEmpty()) {
            return Decision.refused(List.of(new PictureRefusal.NoPicture(found(bytes))));
        }
        Size found = size.orElseThrow();
        boolean large = found.width() > EDGE_PIXELS_MAX || found.height() > EDGE_PIXELS_MAX
                || (long) found.width() * found.height() > PIXELS_MAX;
        return large
                ? Decision.refused(List.of(new PictureRefusal.PictureTooLarge(
                        found.width(), found.height(), EDGE_PIXELS_MAX, PIXELS_MAX)))
                : Decision.accepted(List.of(new Picture(
                        sha256(bytes), found.type(), found.width(), found.height(), bytes.length)));
    }

    /** SHA-256 of {@code bytes} in lower-case hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Signature, a first chunk IHDR with width and height, a last chunk IEND and nothing behind it. */
    private static Optional<Size> png(byte[] b) {
        int least = PNG_SIGNATURE.length + PNG_CHUNK_FRAME + 13;
        if (b.length < least || !startsWith(b, 0, PNG_SIGNATURE) || !startsWith(b, 12, PNG_HEADER)) {
            return Optional.empty();
        }
        int width = int32(b, 16);
        int height = int32(b, 20);
        boolean whole = pngEnds(b);
        return whole && width > 0 && height > 0 ? Optional.of(new Size(PictureType.PNG, width, height))
                : Optional.empty();
    }

    private static boolean pngEnds(byte[] b) {
        long at = PNG_SIGNATURE.length;
        while (at + PNG_CHUNK_FRAME <= b.length) {
            long length = Integer.toUnsignedLong(int32(b, (int) at));
            boolean end = startsWith(b, (int) at + 4, PNG_END);
            at += PNG_CHUNK_FRAME + length;
            if (end) {
                return at == b.length;
            }
        }
        return false;
    }

    /** Start of image, segments up to a start of frame with height and width, an end of image behind it. */
    private static Optional<Size> jpeg(byte[] b) {
        boolean framed = b.length > 10 && at(b, 0) == 0xFF && at(b, 1) == 0xD8 && hasJpegEnd(b);
        int at = 2;
        while (framed && at + 9 < b.length && at(b, at) == 0xFF) {
            int marker = at(b, at + 1);
            if (marker == 0xFF) {
                at++;
            } else if (isFrame(marker)) {
                int height = int16(b, at + 5);
                int width = int16(b, at + 7);
                return width > 0 && height > 0 ? Optional.of(new Size(PictureType.JPEG, width, height))
                        : Optional.empty();
            } else if (marker == 0xDA || int16(b, at + 2) < 2) {
                return Optional.empty();
            } else {
                at += 2 + int16(b, at + 2);
            }
        }
        return Optional.empty();
    }

    /** Whether it was not cut off; cameras may add something of their own behind the end. */
    private static boolean hasJpegEnd(byte[] b) {
        int at = b.length - 2;
        while (at > 2 && !(at(b, at) == 0xFF && at(b, at + 1) == 0xD9)) {
            at--;
        }
        return at > 2;
    }

    /** SOF0 to SOF15 without DHT (C4), JPG (C8) and DAC (CC): ISO/IEC 10918-1, table B.1 (from memory). */
    private static boolean isFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    private static String found(byte[] b) {
        return b.length == 0 ? "nothing"
                : "bytes " + HexFormat.ofDelimiter(" ").formatHex(Arrays.copyOf(b, Math.min(4, b.length)));
    }

    private static boolean startsWith(byte[] b, int from, byte[] what) {
        return from + what.length <= b.length
                && Arrays.equals(Arrays.copyOfRange(b, from, from + what.length), what);
    }

    private static int at(byte[] b, int index) {
        return b[index] & 0xFF;
    }

    private static int int16(byte[] b, int index) {
        return at(b, index) << 8 | at(b, index + 1);
    }

    private static int int32(byte[] b, int index) {
        return int16(b, index) << 16 | int16(b, index + 2);
    }
}
