package brightseam.picture.shell;

import brightseam.picture.Picture;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Gives stored pictures to whoever is signed in: as what they are and nothing else, and 404 where there is none. */
@RestController
class PictureController {

    /** A key never names other bytes. */
    private static final Duration KEPT = Duration.ofDays(30);
    private static final String NOTHING_INSIDE_RUNS = "default-src 'none'; frame-ancestors 'none'; sandbox";

    private final Pictures pictures;

    PictureController(Pictures pictures) {
        this.pictures = pictures;
    }

    @GetMapping("/picture/{sha256}")
    ResponseEntity<byte[]> picture(@PathVariable String sha256) {
        return (Picture.isKey(sha256) ? pictures.find(sha256) : Optional.<Picture>empty())
                .flatMap(known -> pictures.bytes(sha256).map(bytes -> answer(known, bytes)))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private static ResponseEntity<byte[]> answer(Picture picture, byte[] bytes) {
        ContentDisposition shown = ContentDisposition.inline()
                .filename(picture.sha256().substring(0, 12) + "." + picture.type().extension()).build();
        return ResponseEntity.ok().contentType(MediaType.parseMediaType(picture.type().mediaType()))
                .cacheControl(CacheControl.maxAge(KEPT).cachePrivate())
                .header(HttpHeaders.CONTENT_DISPOSITION, shown.toString())
                .header("X-Content-Type-Options", "nosniff")
                .header("Content-Security-Policy", NOTHING_INSIDE_RUNS).body(bytes);
    }
}
