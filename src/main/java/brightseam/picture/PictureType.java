package brightseam.picture;

/** The forms of pictures that are let in. */
public enum PictureType {
    /** ISO/IEC 15948. */
    PNG("image/png", "png"),
    /** ISO/IEC 10918-1 in JFIF or Exif form. */
    JPEG("image/jpeg", "jpg");

    private final String mediaType;
    private final String extension;

    PictureType(String mediaType, String extension) {
        this.mediaType = mediaType;
        this.extension = extension;
    }

    /** Its media type, such as {@code image/png}. */
    public String mediaType() {
        return mediaType;
    }

    /** How the names of such files end. */
    public String extension() {
        return extension;
    }
}
