package brightseam.browser;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A camera that looks at one picture on a bench: a film for Chromium's fake camera, uncompressed (YUV4MPEG2). */
final class FakeCamera {

    private static final int WIDTH_PX = 1280;
    private static final int HEIGHT_PX = 720;
    private static final int PICTURE_PX = 600;
    private static final int FRAMES = 3;
    /** Grey has no colour: the middle of both colour planes. */
    private static final int NO_COLOUR = 128;

    private FakeCamera() {}

    /** Films {@code picture}, a little askew, into {@code film}; the arguments that make a Chromium see it. */
    static List<String> lookingAt(BufferedImage picture, Path film) throws IOException {
        BufferedImage seen = seen(picture);
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(film))) {
            out.write("YUV4MPEG2 W%d H%d F10:1 Ip A1:1 C420\n".formatted(WIDTH_PX, HEIGHT_PX)
                    .getBytes(StandardCharsets.US_ASCII));
            for (int frame = 0; frame < FRAMES; frame++) {
                out.write("FRAME\n".getBytes(StandardCharsets.US_ASCII));
                frame(seen, out);
            }
        }
        return List.of("--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream",
                "--use-file-for-fake-video-capture=" + film.toAbsolutePath());
    }

    private static BufferedImage seen(BufferedImage picture) {
        BufferedImage seen = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = seen.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.setColor(Color.GRAY);
        pen.fillRect(0, 0, WIDTH_PX, HEIGHT_PX);
        int height = PICTURE_PX * picture.getHeight() / picture.getWidth();
        pen.rotate(Math.toRadians(4), WIDTH_PX / 2.0, HEIGHT_PX / 2.0);
        pen.drawImage(picture, (WIDTH_PX - PICTURE_PX) / 2, (HEIGHT_PX - height) / 2, PICTURE_PX, height, null);
        pen.dispose();
        return seen;
    }

    /** Luma from 16 to 235 (ITU-R BT.601, from memory), then both colour planes at half size each way. */
    private static void frame(BufferedImage seen, OutputStream out) throws IOException {
        for (int y = 0; y < HEIGHT_PX; y++) {
            for (int x = 0; x < WIDTH_PX; x++) {
                out.write(16 + seen.getRaster().getSample(x, y, 0) * 219 / 255);
            }
        }
        for (int i = 0; i < WIDTH_PX * HEIGHT_PX / 2; i++) {
            out.write(NO_COLOUR);
        }
    }
}
