package brightseam.scan.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.bench.Camera;
import brightseam.bench.ReadRate;
import brightseam.bench.Shot;
import brightseam.scan.AimingFrame;
import brightseam.scan.FrameReading;
import brightseam.scan.FrameReading.FrameFault;
import brightseam.scan.Label;
import brightseam.scan.LabelKind;
import brightseam.scan.Meaning;
import brightseam.scan.OwnLabel;
import brightseam.scan.ScanParser;
import brightseam.scan.ScanReading;
import brightseam.scan.SupplierLabel;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.MultiFormatWriter;
import com.google.zxing.common.BitMatrix;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Camera frames: what is read, what is not looked at, and that nothing is made up. */
class FrameReaderTest {

    private static final FrameReader READER = new FrameReader();
    private static final Label LABEL =
            new Label(new OwnLabel(LabelKind.BIN, "B-0142"), "Clean bin", List.of("Lid on"), true);

    @Test
    void our_label_is_read_tilted_turned_blurred_under_glare_and_at_arms_length() {
        for (Shot shot : ReadRate.shots()) {
            if (List.of("good light, 40 cm", "arm's length, 60 cm", "tilted 30 degrees", "turned to any angle",
                    "blurred, 2 pixels", "lamp's glare", "noise").contains(shot.name())) {
                ReadRate.Rate rate = ReadRate.measure(shot, LabelImage.SYMBOL, 6, 4711);
                assertThat(rate.read()).as(shot.name()).isGreaterThanOrEqualTo(5);
                assertThat(rate.falseReads()).as(shot.name()).isZero();
            }
        }
    }

    @Test
    void pictures_without_a_code_give_no_label_of_ours() {
        BufferedImage wordsOnly = new LabelImage().of(LABEL, 10).getSubimage(490, 0, 500, 500);
        Camera camera = new Camera(wordsOnly, 10, 25, 25);
        Random random = new Random(88);
        for (Shot shot : ReadRate.shots()) {
            FrameReading seen = READER.read(camera.jpeg(shot, random), AimingFrame.whole());
            assertThat(seen instanceof FrameReading.Seen found && parse(found) instanceof OwnLabel).isFalse();
        }
    }

    @Test
    void only_the_aiming_frame_is_looked_at() throws IOException {
        BufferedImage frame = new BufferedImage(1280, 720, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = frame.createGraphics();
        graphics.setColor(Color.LIGHT_GRAY);
        graphics.fillRect(0, 0, 1280, 720);
        graphics.drawImage(new LabelImage().of(LABEL, 4), 20, 20, null);
        assertThat(READER.read(png(frame), AimingFrame.middle())).isEqualTo(new FrameReading.NothingSeen());
        graphics.drawImage(new LabelImage().of(LABEL, 4), 540, 260, null);
        graphics.dispose();

        assertThat(parse((FrameReading.Seen) READER.read(png(frame), AimingFrame.middle()))).isEqualTo(LABEL.own());
    }

    @Test
    void a_suppliers_linear_code_comes_with_its_separators_and_symbology() throws Exception {
        BitMatrix code = new MultiFormatWriter().encode("10628S93R\u00F1212517", BarcodeFormat.CODE_128, 500, 120,
                Map.of(EncodeHintType.GS1_FORMAT, true));

        FrameReading.Seen seen = (FrameReading.Seen) READER.read(png(drawn(code)), AimingFrame.whole());

        assertThat(seen.scan().symbology()).isPresent();
        assertThat(seen.scan().data()).contains("628S93R").contains("\u001D");
        assertThat(parse(seen)).isInstanceOfSatisfying(SupplierLabel.class, label -> {
            assertThat(label.lot()).contains("628S93R");
            assertThat(label.value(Meaning.SERIAL)).contains("2517");
        });
    }

    @Test
    void code_39_is_read_upright_too() throws Exception {
        BitMatrix code = new MultiFormatWriter().encode("T9T3381", BarcodeFormat.CODE_39, 500, 120);
        GreyImage upright = GreyImage.of(drawn(code)).turned();

        assertThat(new Cascade(upright).read()).hasValueSatisfying(
                found -> assertThat(found.text()).isEqualTo("T9T3381"));
    }

    @Test
    void a_frame_that_is_too_large_or_no_picture_is_not_looked_at() throws IOException {
        assertThat(READER.read(new byte[FrameDecoding.BYTES_MAX + 1], AimingFrame.whole()))
                .isEqualTo(new FrameReading.NotLookedAt(FrameFault.TOO_MANY_BYTES));
        assertThat(READER.read(png(new BufferedImage(2200, 1001, BufferedImage.TYPE_BYTE_BINARY)), AimingFrame.whole()))
                .isEqualTo(new FrameReading.NotLookedAt(FrameFault.TOO_MANY_PIXELS));
        assertThat(READER.read("<svg/>".getBytes(), AimingFrame.whole()))
                .isEqualTo(new FrameReading.NotLookedAt(FrameFault.NO_PICTURE));
        assertThat(READER.read(new byte[0], AimingFrame.whole()))
                .isEqualTo(new FrameReading.NotLookedAt(FrameFault.NO_PICTURE));
    }

    @Test
    void broken_pictures_never_throw() throws IOException {
        byte[] whole = png(new LabelImage().of(LABEL, 2));
        Random random = new Random(16022);
        for (int round = 0; round < 80; round++) {
            byte[] broken = whole.clone();
            for (int i = 0; i < 1 + random.nextInt(20); i++) {
                broken[8 + random.nextInt(broken.length - 8)] = (byte) random.nextInt(256);
            }
            assertThat(READER.read(broken, AimingFrame.whole())).isNotNull();
        }
    }

    @Test
    void the_smallest_pictures_are_looked_at() {
        for (int side = 1; side < 12; side++) {
            BufferedImage small = new BufferedImage(side, 12 - side, BufferedImage.TYPE_BYTE_GRAY);
            assertThat(READER.read(small, AimingFrame.middle())).isEqualTo(new FrameReading.NothingSeen());
        }
    }

    private static BufferedImage drawn(BitMatrix code) {
        BufferedImage image =
                new BufferedImage(code.getWidth() + 80, code.getHeight() + 80, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                boolean inside = x >= 40 && y >= 40 && x < code.getWidth() + 40 && y < code.getHeight() + 40;
                image.setRGB(x, y, inside && code.get(x - 40, y - 40) ? 0 : 0xFFFFFF);
            }
        }
        return image;
    }

    private static ScanReading parse(FrameReading.Seen seen) {
        return ScanParser.standard().parse(seen.scan(), LocalDate.of(2026, 1, 15));
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }
}
