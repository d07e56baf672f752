package brightseam.scan.shell;

import brightseam.scan.Label;
import brightseam.scan.LabelSymbol;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.springframework.stereotype.Component;

/** A label as a picture, drawn from the very page that is printed. */
@Component
public class LabelImage {

    /** The symbology of our own labels, by measured read rates: decision 12 in {@code DEVELOPERS.md}. */
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
}
