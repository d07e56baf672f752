package brightseam.scan.shell;

import brightseam.scan.Label;
import brightseam.scan.LabelSymbol;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.springframework.stereotype.Component;

/** A label as a picture, drawn from the very page that is printed. */
@Component
public class LabelImage {

    /**
     * The symbology of our own labels: Data Matrix, by measured read rates ({@code brightseam.bench.ReadRate}, 100
     * generated pictures each, both symbols on the same square of paper, quiet zone included).
     *
     * <ol>
     *   <li>Read by the camera, Data Matrix against QR: at 80 cm 61 to 1 in a hundred; blurred by 2 pixels 99 to 15;
     *       smeared by 6 pixels 100 to 22; at arm's length, tilted, turned, blurred and under glare together 87 to 0.
     *       The envelope is one codeword in Data Matrix, so 18 modules hold what takes QR 25, and each is larger.
     *   <li>QR is better tilted by 45 degrees (100 to 94) and by a hair in noise (100 to 99); strong glare, which
     *       washes modules out, leaves 60 of Data Matrix and 54 of QR. These are the price.
     *   <li>The library finds Data Matrix only where the middle of the picture lies on the symbol, and upright: the
     *       cascade turns the picture and looks at its corners, which costs tens of milliseconds where nothing is
     *       read, and the page shows an aiming frame.
     *   <li>The pictures are generated; rates on real tablets were not measured.
     * </ol>
     */
    public static final LabelSymbol SYMBOL = LabelSymbol.DATA_MATRIX;

    private static final float MILLIMETRES_PER_INCH = 25.4f;

    /** The label as it is printed, in grey. */
    public BufferedImage of(Label label, float pixelsPerMillimetre) {
        return of(label, SYMBOL, pixelsPerMillimetre);
    }

    /** The label with {@code symbol}, in grey, for comparing symbologies. */
    public BufferedImage of(Label label, LabelSymbol symbol, float pixelsPerMillimetre) {
        try (PDDocument document = Loader.loadPDF(LabelPrinter.pages(List.of(label), symbol))) {
            return new PDFRenderer(document)
                    .renderImageWithDPI(0, pixelsPerMillimetre * MILLIMETRES_PER_INCH, ImageType.GRAY);
        } catch (IOException lost) {
            throw new UncheckedIOException(lost);
        }
    }

    /** The label as a PNG. */
    public byte[] png(Label label, float pixelsPerMillimetre) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(of(label, pixelsPerMillimetre), "png", out);
            return out.toByteArray();
        } catch (IOException lost) {
            throw new UncheckedIOException(lost);
        }
    }
}
