package brightseam.scan;

/** What was seen in a camera frame. */
public sealed interface FrameReading {

    /** A code. */
    record Seen(RawScan scan) implements FrameReading {}

    /** No code. */
    record NothingSeen() implements FrameReading {}

    /** Not looked at. */
    record NotLookedAt(FrameFault fault) implements FrameReading {}

    /** Why a frame was not looked at. */
    enum FrameFault {
        /** More bytes than a frame may have. */
        TOO_MANY_BYTES,
        /** More pixels than a frame may have. */
        TOO_MANY_PIXELS,
        /** Neither a PNG nor a JPEG that can be decoded. */
        NO_PICTURE
    }
}
