package brightseam.ui.parts;

import brightseam.procedure.Hold;
import brightseam.words.Words;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;

/**
 * How long a step lasted, as a bar from zero against its limits. What is over the maximum is striped.
 *
 * @param label what was held
 * @param hold its limits
 * @param lasted how long it really lasted, not negative
 */
public record HoldBar(String label, Hold hold, Duration lasted) implements Drawing {

    private static final int WIDTH = 900;
    private static final int HEIGHT = 150;
    private static final double LEFT = 20;
    private static final double RIGHT = 830;
    private static final double EDGE = 895;
    private static final double TOP = 58;
    private static final double THICK = 40;

    /** Refuses a negative length. */
    public HoldBar {
        if (lasted.isNegative()) {
            throw new IllegalArgumentException("a hold lasts forward");
        }
    }

    @Override
    public String words() {
        String verdict = isShort() ? "shorter than the minimum" : isOver() ? "over the maximum" : "within its limits";
        return label + ": held " + Words.duration(lasted) + ", " + verdict + ".";
    }

    @Override
    public String svg() {
        double longest = Math.max(lasted.toSeconds(), hold.maximum().orElse(hold.minimum()).toSeconds());
        Axis axis = Axis.seconds(Math.max(1, longest * 1.1), LEFT, RIGHT);
        Pen pen = new Pen(WIDTH, HEIGHT, words());
        bar(pen, axis);
        if (!hold.minimum().isZero()) {
            limit(pen, axis, hold.minimum(), 46, "min ");
        }
        hold.maximum().ifPresent(maximum -> limit(pen, axis, maximum, 22, "max "));
        double end = axis.at(lasted.toSeconds());
        pen.clearLabel(end, TOP + THICK / 2 + 6, limitsAt(axis), Words.duration(lasted));
        ticks(pen, axis);
        return pen.done();
    }

    private List<Double> limitsAt(Axis axis) {
        return Stream.concat(Stream.of(hold.minimum()), hold.maximum().stream())
                .map(limit -> axis.at(limit.toSeconds())).toList();
    }

    private void bar(Pen pen, Axis axis) {
        double end = axis.at(lasted.toSeconds());
        double sound = isOver() ? axis.at(hold.maximum().orElseThrow().toSeconds()) : end;
        pen.box(LEFT, TOP, sound - LEFT, THICK, isShort() ? "#fff" : "#999");
        if (isOver()) {
            pen.box(sound, TOP, end - sound, THICK, "#fff").stripes(sound, TOP, end - sound, THICK);
        }
    }

    private static void limit(Pen pen, Axis axis, Duration at, double labelY, String name) {
        double x = axis.at(at.toSeconds());
        pen.line(x, labelY - 12, x, TOP + THICK + 8, 3, false);
        pen.label(x, labelY, EDGE, false, name + Words.duration(at));
    }

    private static void ticks(Pen pen, Axis axis) {
        double y = TOP + THICK + 8;
        pen.line(LEFT, y, RIGHT, y, 2, false);
        boolean minutes = axis.step() >= 60;
        for (double tick : axis.ticks()) {
            pen.line(axis.at(tick), y, axis.at(tick), y + 7, 2, false);
            pen.text(axis.at(tick), y + 26, 15, "middle", false, Words.plain(minutes ? tick / 60 : tick));
        }
        pen.text(EDGE, y + 26, 15, "end", true, minutes ? "min" : "s");
    }

    private boolean isOver() {
        return hold.maximum().filter(maximum -> lasted.compareTo(maximum) > 0).isPresent();
    }

    private boolean isShort() {
        return lasted.compareTo(hold.minimum()) < 0;
    }
}
