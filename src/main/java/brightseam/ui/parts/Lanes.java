package brightseam.ui.parts;

import brightseam.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What happens beside one another on a time axis: a lane for each, bars for what lasts, upright lines for moments.
 * Black on white; sorts of bars differ by filling and by their words, not by colour.
 *
 * @param words what the picture shows, as a sentence
 * @param from the left end
 * @param until the right end, after {@code from}
 * @param zone in which the clock times are read
 * @param lanes from the top
 * @param moments lines through every lane
 */
public record Lanes(String words, Instant from, Instant until, ZoneId zone, List<Lane> lanes, List<Moment> moments)
        implements Drawing {

    /** How a bar is filled. */
    public enum Filling {
        /** Something that lasts as it has to. */
        GREY,
        /** Something that may last longer without harm. */
        WHITE,
        /** Something that does harm. */
        STRIPES,
        /** Hands at work. */
        BLACK
    }

    /** One bar; where its words do not fit in, they are left out. */
    public record Bar(Instant from, Instant until, Filling filling, String words) {}

    /** One lane with its name. */
    public record Lane(String name, List<Bar> bars) {
        /** Copies the list. */
        public Lane {
            bars = List.copyOf(bars);
        }
    }

    /** A moment with a name. */
    public record Moment(Instant at, String words) {}

    private static final int WIDTH = 1160;
    private static final double LEFT = 150;
    private static final double RIGHT = 1145;
    private static final double TOP = 40;
    private static final double HIGH = 42;
    private static final double BAR = 30;
    private static final double LETTER = 8.2;
    private static final int TICKS_MAX = 9;

    /** Copies the lists; refuses an axis without length. */
    public Lanes {
        lanes = List.copyOf(lanes);
        moments = List.copyOf(moments);
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("a time axis runs forward");
        }
    }

    @Override
    public String svg() {
        int height = (int) (TOP + Math.max(1, lanes.size()) * HIGH + 44);
        Pen pen = new Pen(WIDTH, height, words);
        double bottom = TOP + lanes.size() * HIGH;
        axis(pen, bottom);
        for (int i = 0; i < lanes.size(); i++) {
            lane(pen, lanes.get(i), TOP + i * HIGH);
        }
        moments.stream().filter(moment -> isInside(moment.at())).forEach(moment -> {
            pen.line(at(moment.at()), 26, at(moment.at()), bottom + 6, 3, true);
            pen.label(at(moment.at()), 22, RIGHT, true, moment.words());
        });
        return pen.done();
    }

    private void lane(Pen pen, Lane lane, double top) {
        pen.line(LEFT, top + HIGH, RIGHT, top + HIGH, 1, false);
        pen.text(LEFT - 8, top + HIGH / 2 + 6, 16, "end", true, lane.name());
        for (Bar bar : lane.bars()) {
            if (bar.until().isAfter(from) && bar.from().isBefore(until)) {
                bar(pen, bar, top + (HIGH - BAR) / 2);
            }
        }
    }

    private void bar(Pen pen, Bar bar, double y) {
        double x = at(bar.from());
        double width = Math.max(2.5, at(bar.until()) - x);
        switch (bar.filling()) {
            case GREY -> pen.box(x, y, width, BAR, "#ccc");
            case WHITE -> pen.box(x, y, width, BAR, "#fff");
            case BLACK -> pen.box(x, y, width, BAR, "#000");
            case STRIPES -> pen.box(x, y, width, BAR, "#fff").stripes(x, y, width, BAR);
        }
        boolean written = bar.filling() == Filling.GREY || bar.filling() == Filling.WHITE;
        fitting(bar.words(), width - 8).filter(words -> written)
                .ifPresent(words -> pen.text(x + 5, y + 20, 15, "start", false, words));
    }

    /** The words, or their first one, or nothing: never over the edge of the bar. */
    private static Optional<String> fitting(String words, double width) {
        List<String> choices = new ArrayList<>(List.of(words));
        choices.add(words.split("[ ,]", 2)[0]);
        return choices.stream().filter(some -> !some.isEmpty() && some.length() * LETTER <= width).findFirst();
    }

    private void axis(Pen pen, double bottom) {
        pen.line(LEFT, bottom, RIGHT, bottom, 2, false);
        Duration step = step();
        Instant tick = firstTick(step);
        while (!tick.isAfter(until)) {
            pen.line(at(tick), bottom, at(tick), bottom + 7, 2, false);
            pen.text(at(tick), bottom + 26, 15, "middle", false, Words.clockTime(tick, from, zone));
            tick = tick.plus(step);
        }
    }

    private Duration step() {
        double raw = Duration.between(from, until).toMinutes() / (double) TICKS_MAX;
        for (int minutes : List.of(1, 2, 5, 10, 15, 30, 60, 120, 240, 480, 720)) {
            if (minutes >= raw) {
                return Duration.ofMinutes(minutes);
            }
        }
        return Duration.ofDays(1 + (long) (raw / 1440));
    }

    /** The first round clock time in the axis. */
    private Instant firstTick(Duration step) {
        Instant day = from.atZone(zone).toLocalDate().atStartOfDay(zone).toInstant();
        long steps = Duration.between(day, from).toSeconds() / step.toSeconds();
        Instant tick = day.plusSeconds(steps * step.toSeconds());
        return tick.isBefore(from) ? tick.plus(step) : tick;
    }

    private boolean isInside(Instant moment) {
        return !moment.isBefore(from) && !moment.isAfter(until);
    }

    private double at(Instant moment) {
        double share = Duration.between(from, moment).toMillis() / (double) Duration.between(from, until).toMillis();
        return LEFT + Math.clamp(share, 0, 1) * (RIGHT - LEFT);
    }
}
