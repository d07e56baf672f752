package brightseam.scan.shell;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The one font of our labels, Liberation Sans, which comes with the PDF library; embedded as a subset. */
final class LabelFont {

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int MISSING = '?';

    private final PDType0Font font;

    private LabelFont(PDType0Font font) {
        this.font = font;
    }

    static LabelFont in(PDDocument document) throws IOException {
        try (InputStream file = PDDocument.class.getResourceAsStream(FILE)) {
            if (file == null) {
                throw new IOException("font not on the class path: " + FILE);
            }
            return new LabelFont(PDType0Font.load(document, file, true));
        }
    }

    PDType0Font font() {
        return font;
    }

    /** {@code text} with a question mark for every character that the font has not. */
    String shown(String text) throws IOException {
        StringBuilder shown = new StringBuilder();
        for (int codePoint : text.codePoints().toArray()) {
            shown.appendCodePoint(has(codePoint) ? codePoint : MISSING);
        }
        return shown.toString();
    }

    /** The size in points at which {@code text} is at most {@code widthPoints} wide and {@code sizePoints} high. */
    float fittingPoints(String text, float sizePoints, float widthPoints) throws IOException {
        float width = widthPoints(text, sizePoints);
        return width <= widthPoints ? sizePoints : sizePoints * widthPoints / width;
    }

    float widthPoints(String text, float sizePoints) throws IOException {
        return font.getStringWidth(text) / 1000 * sizePoints;
    }

    private boolean has(int codePoint) throws IOException {
        try {
            font.encode(new String(Character.toChars(codePoint)));
            return true;
        } catch (IllegalArgumentException notInTheFont) {
            return false;
        }
    }
}
