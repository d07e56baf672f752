package brightseam.scan.shell;

import brightseam.scan.AimingFrame;
import brightseam.scan.FrameReading;
import brightseam.scan.FrameReading.FrameFault;
import brightseam.scan.RawScan;
import java.awt.image.BufferedImage;
import org.springframework.stereotype.Component;

/**
 * Reads a code out of a camera frame: Data Matrix and QR, and Code 128 and Code 39 for suppliers' labels.
 *
 * <p>A false read is possible with any reader; what it gives still has to pass {@link brightseam.scan.ScanParser},
 * where our own labels prove themselves by prefix and check character.
 */
@Component
public class FrameReader {

    /** Reads a PNG or JPEG of at most 4 MiB and 2.2 million pixels, looking at {@code aim} only. */
    public FrameReading read(byte[] encoded, AimingFrame aim) {
        FrameDecoding.Decoded decoded = FrameDecoding.decode(encoded);
        return decoded.picture().map(picture -> look(picture, aim))
                .orElseGet(() -> new FrameReading.NotLookedAt(decoded.fault().orElseThrow()));
    }

    /** Reads a picture that is in memory already. */
    public FrameReading read(BufferedImage frame, AimingFrame aim) {
        if ((long) frame.getWidth() * frame.getHeight() > FrameDecoding.PIXELS_MAX) {
            return new FrameReading.NotLookedAt(FrameFault.TOO_MANY_PIXELS);
        }
        return look(GreyImage.of(frame), aim);
    }

    private static FrameReading look(GreyImage picture, AimingFrame aim) {
        return new Cascade(picture.crop(aim)).read()
                .<FrameReading>map(found -> new FrameReading.Seen(RawScan.camera(found.text(), found.symbology())))
                .orElseGet(FrameReading.NothingSeen::new);
    }
}
