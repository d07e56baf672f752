package brightseam.report.shell;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.datamatrix.DataMatrixWriter;
import com.google.zxing.datamatrix.encoder.SymbolShapeHint;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import org.w3c.dom.Element;

/** Draws a square Data Matrix as filled modules, with a quiet zone of two modules (the standard asks for one). */
final class DataMatrixDrawer implements FSObjectDrawer {

    static final String TYPE = "brightseam/data-matrix";
    static final String PAYLOAD = "data-payload";
    private static final int QUIET_MODULES = 2;

    @Override
    public Map<Shape, String> drawObject(Element element, double x, double y, double width, double height,
            OutputDevice device, RenderingContext context, int dotsPerPixel) {
        BitMatrix modules = new DataMatrixWriter().encode(element.getAttribute(PAYLOAD), BarcodeFormat.DATA_MATRIX,
                0, 0, Map.of(EncodeHintType.DATA_MATRIX_SHAPE, SymbolShapeHint.FORCE_SQUARE));
        device.drawWithGraphics((float) x, (float) y, (float) width / dotsPerPixel, (float) height / dotsPerPixel,
                pen -> draw(pen, modules, Math.min(width, height) / dotsPerPixel));
        return null;
    }

    /** One path for the whole symbol, so that no seam shows between modules. */
    private static void draw(Graphics2D pen, BitMatrix modules, double side) {
        double module = side / (modules.getWidth() + 2 * QUIET_MODULES);
        Path2D symbol = new Path2D.Double();
        for (int row = 0; row < modules.getHeight(); row++) {
            int column = 0;
            while (column < modules.getWidth()) {
                int end = column;
                while (end < modules.getWidth() && modules.get(end, row)) {
                    end++;
                }
                if (end > column) {
                    symbol.append(new Rectangle2D.Double((column + QUIET_MODULES) * module,
                            (row + QUIET_MODULES) * module, (end - column) * module, module), false);
                }
                column = end + 1;
            }
        }
        pen.setColor(Color.BLACK);
        pen.fill(symbol);
    }
}
