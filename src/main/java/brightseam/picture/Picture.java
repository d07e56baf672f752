package brightseam.picture;

/**
 * A picture that was let in.
 *
 * @param sha256 SHA-256 of its bytes, 64 lower-case hexadecimal digits
 * @param type its form
 * @param widthPixels its width
 * @param heightPixels its height
 * @param sizeBytes how many bytes it has
 */
public record Picture(String sha256, PictureType type, int widthPixels, int heightPixels, int sizeBytes) {

    /** Refuses what is no SHA-256. */
    public Picture {
        if (!isKey(sha256)) {
            throw new IllegalArgumentException("a picture's key has 64 lower-case hexadecimal digits");
        }
    }

    /** Whether {@code text} has the form of a key. */
    public static boolean isKey(String text) {
        return text != null && text.matches("[0-9a-f]{64}");
    }
}
