package brightseam.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PictureCheckTest {

    private static byte[] drawn(String form) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(new BufferedImage(37, 21, BufferedImage.TYPE_INT_RGB), form, out);
            return out.toByteArray();
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static Picture accepted(byte[] bytes) {
        return ((Decision.Accepted<Picture>) assertInstanceOf(Decision.Accepted.class, PictureCheck.check(bytes)))
                .events().getFirst();
    }

    private static List<String> refused(byte[] bytes) {
        return ((Decision.Refused<Picture>) assertInstanceOf(Decision.Refused.class, PictureCheck.check(bytes)))
                .refusals().stream().map(Refusal::code).toList();
    }

    @Test
    void a_png_and_a_jpeg_are_known_by_their_bytes_with_their_size() {
        Picture png = accepted(drawn("png"));
        assertEquals(List.of(PictureType.PNG, 37, 21), List.of(png.type(), png.widthPixels(), png.heightPixels()));
        Picture jpeg = accepted(drawn("jpg"));
        assertEquals(List.of(PictureType.JPEG, 37, 21),
                List.of(jpeg.type(), jpeg.widthPixels(), jpeg.heightPixels()));
    }

    /** FIPS 180-4, the example "abc". */
    @Test
    void the_key_is_the_sha_256_of_the_bytes() {
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                PictureCheck.sha256("abc".getBytes(StandardCharsets.US_ASCII)));
        assertEquals(PictureCheck.sha256(drawn("png")), accepted(drawn("png")).sha256());
    }

    @Test
    void what_was_cut_off_or_is_something_else_is_no_picture() {
        byte[] png = drawn("png");
        byte[] jpeg = drawn("jpg");
        assertEquals(List.of("picture-none"), refused(Arrays.copyOf(png, png.length - 5)));
        assertEquals(List.of("picture-none"), refused(Arrays.copyOf(jpeg, jpeg.length - 5)));
        assertEquals(List.of("picture-none"), refused("<svg onload='x'/>".getBytes(StandardCharsets.UTF_8)));
        assertEquals(List.of("picture-none"), refused("GIF89a".getBytes(StandardCharsets.UTF_8)));
        assertEquals(List.of("picture-none"), refused(new byte[0]));
        byte[] behind = Arrays.copyOf(png, png.length + 7);
        assertEquals(List.of("picture-none"), refused(behind));
    }

    @Test
    void a_small_file_that_would_unpack_to_gigabytes_is_refused_by_what_its_header_says() {
        byte[] bomb = drawn("png");
        ByteBuffer.wrap(bomb).putInt(16, 60_000).putInt(20, 60_000);
        assertEquals(List.of("picture-too-large"), refused(bomb));
        ByteBuffer.wrap(bomb).putInt(16, 9_000).putInt(20, 9_000);
        assertEquals(List.of("picture-too-large"), refused(bomb));
        ByteBuffer.wrap(bomb).putInt(16, -1);
        assertEquals(List.of("picture-none"), refused(bomb));
        assertEquals(List.of("picture-too-heavy"), refused(new byte[PictureCheck.BYTES_MAX + 1]));
    }

    @Test
    void any_bytes_are_answered() {
        java.util.Random random = new java.util.Random(5);
        byte[] png = drawn("png");
        byte[] jpeg = drawn("jpg");
        for (int i = 0; i < 5_000; i++) {
            byte[] bytes = (i % 2 == 0 ? png : jpeg).clone();
            for (int j = 0; j < 3; j++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
            }
            PictureCheck.check(Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)));
        }
    }
}
