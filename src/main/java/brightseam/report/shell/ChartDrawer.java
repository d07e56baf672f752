package brightseam.report.shell;

import brightseam.chart.PaperCanvas;
import brightseam.chart.SeriesChart;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/** Draws the charts of a sheet, each named by its number. */
final class ChartDrawer implements FSObjectDrawer {

    static final String TYPE = "brightseam/chart";
    static final String NUMBER = "data-chart";

    private final List<SeriesChart> charts;

    ChartDrawer(List<SeriesChart> charts) {
        this.charts = charts;
    }

    @Override
    public Map<Shape, String> drawObject(Element element, double x, double y, double width, double height,
            OutputDevice device, RenderingContext context, int dotsPerPixel) {
        SeriesChart chart = charts.get(Integer.parseInt(element.getAttribute(NUMBER)));
        double wide = width / dotsPerPixel;
        double high = height / dotsPerPixel;
        double scale = Math.min(wide / SeriesChart.WIDTH, high / SeriesChart.HEIGHT);
        device.drawWithGraphics((float) x, (float) y, (float) wide, (float) high, pen -> {
            pen.scale(scale, scale);
            chart.draw(new PaperCanvas(pen));
        });
        return null;
    }
}
