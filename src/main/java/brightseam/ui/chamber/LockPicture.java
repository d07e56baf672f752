package brightseam.ui.chamber;

import brightseam.chart.Canvas;
import brightseam.chart.Canvas.Anchor;
import brightseam.chart.Canvas.Shade;
import brightseam.chart.Canvas.Stroke;
import brightseam.chart.SvgCanvas;
import brightseam.ui.parts.Drawn;
import brightseam.words.Words;

/** The lock from the side: the shop on the left, the chamber on the right, a door each between. */
final class LockPicture {

    private static final int WIDTH = 620;
    private static final int HEIGHT = 310;
    private static final double TOP = 60;
    private static final double FOOT = 240;
    private static final double OUTER = 190;
    private static final double INNER = 430;
    private static final double WALL = 8;
    private static final double LEAF = 12;
    private static final double ARGON_APART = 14;
    private static final int WORDS = 23;
    private static final int THINGS_SHOWN_MAX = 4;

    private LockPicture() {}

    static Drawn of(Doing.AtLock lock) {
        SvgCanvas canvas = new SvgCanvas(WIDTH, HEIGHT, lock.state());
        draw(canvas, lock);
        return new Drawn(canvas.done(), "");
    }

    private static void draw(Canvas canvas, Doing.AtLock lock) {
        boolean argon = switch (lock.doors()) {
            case BOTH_SHUT_ARGON, INNER_OPEN -> true;
            case BOTH_SHUT_AIR, OUTER_OPEN, PURGING -> false;
        };
        canvas.hatch(INNER, TOP, WIDTH - INNER - 4, FOOT - TOP, ARGON_APART);
        if (argon) {
            canvas.hatch(OUTER, TOP, INNER - OUTER, FOOT - TOP, ARGON_APART);
        } else if (lock.doors() == Doing.Doors.PURGING) {
            canvas.hatch(OUTER, (TOP + FOOT) / 2 + 20, INNER - OUTER, (FOOT - TOP) / 2 - 20, ARGON_APART);
        }
        walls(canvas);
        door(canvas, OUTER, lock.doors() == Doing.Doors.OUTER_OPEN, -1);
        door(canvas, INNER, lock.doors() == Doing.Doors.INNER_OPEN, 1);
        words(canvas, 90, "Shop", "air");
        words(canvas, (OUTER + INNER) / 2, "Lock", gas(lock.doors()));
        words(canvas, (INNER + WIDTH) / 2, "Chamber", "argon");
        things(canvas, lock.inside().size());
        canvas.text(OUTER, HEIGHT - 34, WORDS, Anchor.MIDDLE, true, "outer door");
        canvas.text(OUTER, HEIGHT - 8, WORDS, Anchor.MIDDLE, false, open(lock.doors() == Doing.Doors.OUTER_OPEN));
        canvas.text(INNER, HEIGHT - 34, WORDS, Anchor.MIDDLE, true, "inner door");
        canvas.text(INNER, HEIGHT - 8, WORDS, Anchor.MIDDLE, false, open(lock.doors() == Doing.Doors.INNER_OPEN));
    }

    private static void walls(Canvas canvas) {
        for (double y : new double[] {TOP - WALL, FOOT}) {
            canvas.box(OUTER - LEAF / 2, y, WIDTH - OUTER - 4, WALL, Shade.BLACK, 0);
        }
        canvas.line(4, FOOT + WALL, OUTER, FOOT + WALL, 2, Stroke.SOLID);
    }

    /** Shut it fills its frame; open it stands out to its side, and the frame is empty. */
    private static void door(Canvas canvas, double x, boolean open, int side) {
        if (!open) {
            canvas.box(x - LEAF / 2, TOP, LEAF, FOOT - TOP, Shade.BLACK, 0);
            return;
        }
        double reach = 66 * side;
        canvas.area(new double[] {x, x + reach, x + reach, x}, new double[] {TOP, TOP - 34, TOP - 22, TOP + LEAF},
                Shade.BLACK, 0);
        canvas.line(x, TOP, x, FOOT, 2, Stroke.DASHED);
    }

    private static void words(Canvas canvas, double x, String place, String gas) {
        double half = Math.max(place.length() * 9, gas.length() * 7) + 10;
        canvas.box(x - half, TOP + 22, 2 * half, 56, Shade.WHITE, 1);
        canvas.text(x, TOP + 44, WORDS + 3, Anchor.MIDDLE, true, place);
        canvas.text(x, TOP + 68, WORDS, Anchor.MIDDLE, false, gas);
    }

    private static void things(Canvas canvas, int count) {
        int shown = Math.min(count, THINGS_SHOWN_MAX);
        double from = (OUTER + INNER) / 2 - shown * 26;
        for (int i = 0; i < shown; i++) {
            canvas.box(from + i * 52, FOOT - 44, 42, 42, Shade.WHITE, 3);
        }
        if (count > 0) {
            canvas.box((OUTER + INNER) / 2 - 54, FOOT - 78, 108, 28, Shade.WHITE, 0);
            canvas.text((OUTER + INNER) / 2, FOOT - 57, WORDS, Anchor.MIDDLE, true,
                    Words.count(count, "thing", "things"));
        }
    }

    private static String gas(Doing.Doors doors) {
        return switch (doors) {
            case BOTH_SHUT_AIR, OUTER_OPEN -> "air";
            case PURGING -> "argon flows in";
            case BOTH_SHUT_ARGON, INNER_OPEN -> "argon";
        };
    }

    private static String open(boolean open) {
        return open ? "OPEN" : "shut";
    }
}
