package brightseam.app;

import brightseam.scan.AimingFrame;
import brightseam.scan.FrameReading;
import brightseam.scan.RawScan;
import brightseam.scan.SymbologyIdentifier;
import brightseam.scan.shell.FrameReader;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * Reads camera frames that the browser cannot read itself. The page has cut them to its aiming frame. Who may send
 * some is said in {@link Security}; nothing of a frame is kept.
 */
@RestController
class ScanController {

    /** Twice what a page sends at most, and far below what the reader takes. */
    static final int BYTES_MAX = 512 * 1024;

    private final FrameReader reader;

    ScanController(FrameReader reader) {
        this.reader = reader;
    }

    /** What was read; empty texts are never answered. */
    record Read(String text, String symbology) {}

    /**
     * 200 with what was read, 204 where nothing was, 413 where the frame has too many bytes or pixels, 415 where it is
     * no JPEG.
     */
    @PostMapping(path = "/scan/frame", consumes = MediaType.IMAGE_JPEG_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<Read> frame(HttpServletRequest request) throws IOException {
        if (request.getContentLengthLong() > BYTES_MAX) {
            return ResponseEntity.status(HttpStatus.CONTENT_TOO_LARGE).build();
        }
        byte[] frame;
        try (InputStream body = request.getInputStream()) {
            frame = body.readNBytes(BYTES_MAX + 1);
        }
        if (frame.length > BYTES_MAX) {
            return ResponseEntity.status(HttpStatus.CONTENT_TOO_LARGE).build();
        }
        return answer(reader.read(frame, AimingFrame.whole()));
    }

    private static ResponseEntity<Read> answer(FrameReading reading) {
        return switch (reading) {
            case FrameReading.Seen(RawScan scan) -> ResponseEntity.ok(
                    new Read(scan.data(), scan.symbology().map(SymbologyIdentifier::toString).orElse("")));
            case FrameReading.NothingSeen nothing -> ResponseEntity.noContent().build();
            case FrameReading.NotLookedAt(FrameReading.FrameFault fault) -> ResponseEntity.status(switch (fault) {
                case TOO_MANY_BYTES, TOO_MANY_PIXELS -> HttpStatus.CONTENT_TOO_LARGE;
                case NO_PICTURE -> HttpStatus.UNSUPPORTED_MEDIA_TYPE;
            }).build();
        };
    }
}
