package brightseam.ui.parts;

/**
 * Where camera frames are read: the page POSTs {@code image/jpeg} of what is inside the aiming frame there, and gets
 * JSON {@code {"text": …, "symbology": …}} or 204 where nothing was read.
 *
 * @param url relative to the context, such as {@code scan/frame}
 * @param csrfHeader the header's name, empty where none is asked for
 * @param csrfToken its value
 */
public record FrameReader(String url, String csrfHeader, String csrfToken) {

    /** A reader that asks for no CSRF header. */
    public static FrameReader at(String url) {
        return new FrameReader(url, "", "");
    }
}
