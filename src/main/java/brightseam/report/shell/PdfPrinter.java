package brightseam.report.shell;

import brightseam.chart.SeriesChart;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Prints a tree of XHTML as PDF, with the one font that comes with the PDF library, and fetches nothing. */
final class PdfPrinter {

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    static {
        XRLog.setLoggingEnabled(false);
    }

    private PdfPrinter() {}

    static byte[] print(Document document, List<SeriesChart> charts) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new PdfRendererBuilder()
                    .useFont(() -> PDDocument.class.getResourceAsStream(FONT), "Liberation Sans")
                    .useUriResolver((base, uri) -> null)
                    .useExternalResourceAccessControl((uri, type) -> false,
                            ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
                    .useExternalResourceAccessControl((uri, type) -> false,
                            ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
                    .useObjectDrawerFactory(new Drawers(charts))
                    .withProducer("Brightseam")
                    .withW3cDocument(document, null)
                    .toStream(out)
                    .run();
            return out.toByteArray();
        } catch (IOException lost) {
            throw new UncheckedIOException(lost);
        }
    }

    private record Drawers(List<SeriesChart> charts) implements FSObjectDrawerFactory {
        @Override
        public FSObjectDrawer createDrawer(Element element) {
            return switch (element.getAttribute("type")) {
                case DataMatrixDrawer.TYPE -> new DataMatrixDrawer();
                case ChartDrawer.TYPE -> new ChartDrawer(charts);
                default -> null;
            };
        }

        @Override
        public boolean isReplacedObject(Element element) {
            return element.getNodeName().equals("object") && (element.getAttribute("type").equals(ChartDrawer.TYPE)
                    || element.getAttribute("type").equals(DataMatrixDrawer.TYPE));
        }
    }
}
