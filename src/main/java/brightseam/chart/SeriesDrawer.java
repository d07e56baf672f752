package brightseam.chart;

import brightseam.chart.Canvas.Anchor;
import brightseam.chart.Canvas.Shade;
import brightseam.chart.Canvas.Stroke;
import brightseam.words.Words;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Draws a {@link SeriesChart}, from what lies at the back to what lies in front. */
final class SeriesDrawer {

    private static final double LEFT = 122;
    private static final double RIGHT = 712;
    private static final double TOP = 54;
    private static final double BOTTOM = 330;
    private static final int TEXT = 22;
    private static final int TEXT_SMALL = 20;
    /** Fewer readings than this are shown as points too. */
    private static final int POINTS_MAX = 60;
    private static final double HATCH = 12;
    private static final double WORD = 60;
    private static final double LETTER = 12.2;

    private final SeriesChart chart;
    private final Canvas canvas;
    private final ValueScale up;

    SeriesDrawer(SeriesChart chart, Canvas canvas) {
        this.chart = chart;
        this.canvas = canvas;
        this.up = chart.scale(BOTTOM, TOP);
    }

    void draw() {
        chart.stretches().forEach(this::stretch);
        chart.fit().ifPresent(this::band);
        grid();
        chart.gaps().forEach(this::gap);
        chart.fit().ifPresent(this::curve);
        measured();
        chart.limit().ifPresent(this::limit);
        chart.fit().flatMap(ChartFit::arrival).ifPresent(this::arrival);
        doubtful();
        last();
    }

    private void grid() {
        for (double tick : up.ticks()) {
            canvas.line(LEFT - 6, up.at(tick), RIGHT, up.at(tick), 0.5, Stroke.SOLID);
            canvas.text(LEFT - 12, up.at(tick) + 6, TEXT_SMALL, Anchor.END, false, ValueScale.number(tick));
        }
        canvas.line(LEFT, TOP, LEFT, BOTTOM, 2, Stroke.SOLID);
        canvas.line(LEFT, BOTTOM, RIGHT, BOTTOM, 2, Stroke.SOLID);
        for (ChartWindow.Tick tick : chart.window().ticks()) {
            double x = across(tick.atMillis());
            canvas.line(x, BOTTOM, x, BOTTOM + 7, 2, Stroke.SOLID);
            canvas.text(x, BOTTOM + 30, TEXT_SMALL, Anchor.MIDDLE, false, tick.label());
        }
        canvas.text(RIGHT, BOTTOM + 58, TEXT_SMALL, Anchor.END, true, chart.window().unit());
        canvas.text(8, 22, TEXT, Anchor.START, true, chart.unit());
        canvas.text(LEFT, 22, TEXT, Anchor.START, false, chart.label());
    }

    private void stretch(SeriesChart.Stretch stretch) {
        double from = across(stretch.fromMillis());
        double width = Math.max(2, across(stretch.toMillis()) - from);
        canvas.box(from, TOP, width, BOTTOM - TOP, Shade.LIGHT, 0);
        canvas.line(from, TOP, from, BOTTOM, 1, Stroke.SOLID);
        canvas.line(from + width, TOP, from + width, BOTTOM, 1, Stroke.SOLID);
        canvas.text(from + width / 2, TOP - 4, TEXT_SMALL, Anchor.MIDDLE, true, stretch.word());
    }

    private void gap(SeriesChart.Gap gap) {
        double from = across(gap.fromMillis());
        double width = across(gap.toMillis()) - from;
        if (width <= 0) {
            return;
        }
        canvas.box(from, TOP, width, BOTTOM - TOP, Shade.WHITE, 0);
        canvas.hatch(from, TOP, width, BOTTOM - TOP, HATCH);
        if (width > WORD) {
            String words = "no data " + Words.duration(Duration.ofMillis(gap.millis()));
            double half = words.length() * LETTER / 2 + 6;
            double middle = Math.clamp(from + width / 2, LEFT + half, RIGHT - half);
            canvas.box(middle - half, BOTTOM - 42, 2 * half, 32, Shade.WHITE, 1);
            canvas.text(middle, BOTTOM - 19, TEXT_SMALL, Anchor.MIDDLE, true, words);
        }
    }

    private void band(ChartFit fit) {
        List<ChartFit.Spot> curve = fit.curve();
        if (curve.size() < 2) {
            return;
        }
        int size = curve.size();
        double[] xs = new double[2 * size];
        double[] ys = new double[2 * size];
        for (int i = 0; i < size; i++) {
            xs[i] = across(curve.get(i).atMillis());
            ys[i] = up.at(curve.get(i).high());
            xs[2 * size - 1 - i] = xs[i];
            ys[2 * size - 1 - i] = up.at(curve.get(i).low());
        }
        canvas.area(xs, ys, Shade.LIGHT, 0);
    }

    private void curve(ChartFit fit) {
        double[] xs = fit.curve().stream().mapToDouble(spot -> across(spot.atMillis())).toArray();
        for (int edge = -1; edge <= 1 && xs.length > 1; edge++) {
            int side = edge;
            double[] ys = fit.curve().stream().mapToDouble(spot -> up.at(
                    side < 0 ? spot.low() : side > 0 ? spot.high() : spot.middle())).toArray();
            canvas.path(xs, ys, side == 0 ? 2.5 : 1, side == 0 ? Stroke.DASHED : Stroke.DOTTED);
        }
    }

    private void measured() {
        List<ChartPoint> run = new ArrayList<>();
        for (ChartPoint point : chart.points()) {
            if (!run.isEmpty() && point.atMillis() - run.getLast().atMillis() > chart.gapMillis()) {
                line(run);
                run.clear();
            }
            run.add(point);
        }
        line(run);
    }

    /** One unbroken stretch; a reading that stands alone is a point, for else nobody would see it. */
    private void line(List<ChartPoint> run) {
        if (run.size() > 1) {
            canvas.path(run.stream().mapToDouble(point -> across(point.atMillis())).toArray(),
                    run.stream().mapToDouble(point -> up.at(point.value())).toArray(), 2.5, Stroke.SOLID);
        }
        if (run.size() == 1 || chart.points().size() <= POINTS_MAX) {
            run.stream().filter(point -> point.doubt() == ChartPoint.Doubt.NONE).forEach(point ->
                    canvas.mark(across(point.atMillis()), up.at(point.value()), 3.5, Canvas.Shape.DISC));
        }
    }

    private void limit(double most) {
        canvas.line(LEFT, up.at(most), RIGHT, up.at(most), 3.5, Stroke.SOLID);
        canvas.text(RIGHT + 10, up.at(most) + 6, TEXT, Anchor.START, true, "limit " + chart.quantity(most));
    }

    private void arrival(ChartFit.Arrival arrival) {
        double y = chart.limit().map(up::at).orElse(BOTTOM);
        double from = across(arrival.earliestMillis());
        double to = across(arrival.latestMillis());
        canvas.line(from, y - 11, from, y + 11, 3, Stroke.SOLID);
        canvas.line(to, y - 11, to, y + 11, 3, Stroke.SOLID);
        canvas.mark(across(arrival.atMillis()), y, 9, Canvas.Shape.DIAMOND);
        String words = chart.arrivalWords(arrival);
        double width = words.length() * LETTER + 16;
        double left = Math.clamp(across(arrival.atMillis()) - width / 2, LEFT + 4, RIGHT - width);
        // Above the curve there is always room: oxygen only ever falls while a chamber is purged.
        canvas.line(across(arrival.atMillis()), TOP + 38, across(arrival.atMillis()), y - 9, 1, Stroke.SOLID);
        canvas.box(left, TOP + 4, width, 34, Shade.WHITE, 1);
        canvas.text(left + width / 2, TOP + 28, TEXT_SMALL, Anchor.MIDDLE, true, words);
    }

    private void doubtful() {
        chart.points().stream().filter(point -> point.doubt() != ChartPoint.Doubt.NONE).forEach(point ->
                canvas.mark(across(point.atMillis()), up.at(point.value()), 6, point.doubt().shape()));
        double x = LEFT + 14;
        List<ChartPoint.Doubt> kinds = chart.points().stream().map(ChartPoint::doubt)
                .filter(doubt -> doubt != ChartPoint.Doubt.NONE).distinct().sorted().toList();
        for (ChartPoint.Doubt kind : kinds) {
            canvas.mark(x, BOTTOM + 52, 6, kind.shape());
            canvas.text(x + 14, BOTTOM + 59, TEXT_SMALL, Anchor.START, false, kind.words());
            x += 14 + kind.words().length() * LETTER + 34;
        }
    }

    /** The last reading with its number; the number goes where the limit's does not stand. */
    private void last() {
        if (chart.points().isEmpty()) {
            canvas.text((LEFT + RIGHT) / 2, (TOP + BOTTOM) / 2, TEXT, Anchor.MIDDLE, true, "no readings yet");
            return;
        }
        ChartPoint last = chart.points().getLast();
        double x = across(last.atMillis());
        double y = up.at(last.value());
        canvas.mark(x, y, 6, last.doubt().shape());
        String words = chart.quantity(last.value());
        boolean fits = x + 14 + words.length() * LETTER < RIGHT;
        canvas.text(fits ? x + 12 : x - 12, y < TOP + 26 ? y + 26 : y - 14, TEXT, fits ? Anchor.START : Anchor.END,
                true, words);
    }

    private double across(long atMillis) {
        double share = (double) (atMillis - chart.window().fromMillis())
                / (chart.window().toMillis() - chart.window().fromMillis());
        return LEFT + Math.clamp(share, 0, 1) * (RIGHT - LEFT);
    }
}
