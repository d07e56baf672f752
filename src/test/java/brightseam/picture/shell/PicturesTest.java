package brightseam.picture.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.Decision;
import brightseam.kernel.Samples;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.picture.Picture;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PicturesTest {

    private final Pictures pictures = new Pictures(FreshDatabase.migrated());

    @Test
    void a_picture_is_given_out_as_it_came_and_kept_once() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BufferedImage image = new BufferedImage(900, 700, BufferedImage.TYPE_INT_RGB);
        java.util.Random random = new java.util.Random(1);
        for (int i = 0; i < 900 * 700; i++) {
            image.setRGB(i % 900, i / 900, random.nextInt());
        }
        ImageIO.write(image, "png", out);
        Picture stored = ((Decision.Accepted<Picture>) assertInstanceOf(
                Decision.Accepted.class, pictures.store(out.toByteArray(), Samples.ORIGIN))).events().getFirst();
        assertInstanceOf(Decision.Accepted.class, pictures.store(out.toByteArray(), Samples.ORIGIN));
        assertEquals(Optional.of(stored), pictures.find(stored.sha256()));
        assertArrayEquals(out.toByteArray(), pictures.bytes(stored.sha256()).orElseThrow());
        assertEquals(Optional.empty(), pictures.find("0".repeat(64)));
    }

    @Test
    void what_is_refused_is_not_kept() {
        assertInstanceOf(Decision.Refused.class, pictures.store(new byte[] {1, 2, 3}, Samples.ORIGIN));
    }
}
