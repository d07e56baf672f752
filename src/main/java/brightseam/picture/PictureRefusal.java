package brightseam.picture;

import brightseam.kernel.Refusal;

/** What stands against letting a picture in. */
public sealed interface PictureRefusal extends Refusal {

    @Override
    default String code() {
        return switch (this) {
            case PictureTooHeavy ignored -> "picture-too-heavy";
            case NoPicture ignored -> "picture-none";
            case PictureTooLarge ignored -> "picture-too-large";
        };
    }

    /** It has more bytes than a picture may have. */
    record PictureTooHeavy(long bytes, long bytesMax) implements PictureRefusal {}

    /** Its bytes are neither a whole PNG nor a whole JPEG. */
    record NoPicture(String found) implements PictureRefusal {}

    /** It has more pixels than a tablet can show. */
    record PictureTooLarge(int widthPixels, int heightPixels, int edgePixelsMax, long pixelsMax)
            implements PictureRefusal {}
}
