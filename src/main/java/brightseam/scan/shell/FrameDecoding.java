package brightseam.scan.shell;

import brightseam.scan.FrameReading.FrameFault;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Decodes a frame's PNG or JPEG, after counting bytes and pixels. */
final class FrameDecoding {

    /** Bytes that a frame may have. */
    static final int BYTES_MAX = 4 * 1024 * 1024;
    /** Pixels that a frame may have: a little over 1920 by 1080. */
    static final int PIXELS_MAX = 2_200_000;

    private FrameDecoding() {}

    /** A picture, or what is wrong with it; exactly one of the two is there. */
    record Decoded(Optional<GreyImage> picture, Optional<FrameFault> fault) {
        static Decoded faulty(FrameFault fault) {
            return new Decoded(Optional.empty(), Optional.of(fault));
        }
    }

    static Decoded decode(byte[] encoded) {
        if (encoded.length > BYTES_MAX) {
            return Decoded.faulty(FrameFault.TOO_MANY_BYTES);
        }
        Optional<String> format = format(encoded);
        if (format.isEmpty()) {
            return Decoded.faulty(FrameFault.NO_PICTURE);
        }
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.get());
        ImageReader reader = readers.next();
        try (MemoryCacheImageInputStream input = new MemoryCacheImageInputStream(new ByteArrayInputStream(encoded))) {
            reader.setInput(input, true, true);
            if ((long) reader.getWidth(0) * reader.getHeight(0) > PIXELS_MAX) {
                return Decoded.faulty(FrameFault.TOO_MANY_PIXELS);
            }
            BufferedImage image = reader.read(0);
            return new Decoded(Optional.of(GreyImage.of(image)), Optional.empty());
        } catch (IOException | RuntimeException broken) {
            // The decoders answer broken files with runtime exceptions of many kinds; the frame is hostile input.
            return Decoded.faulty(FrameFault.NO_PICTURE);
        } finally {
            reader.dispose();
        }
    }

    private static Optional<String> format(byte[] encoded) {
        if (startsWith(encoded, 0x89, 'P', 'N', 'G')) {
            return Optional.of("png");
        }
        return startsWith(encoded, 0xFF, 0xD8, 0xFF) ? Optional.of("jpeg") : Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }
}
