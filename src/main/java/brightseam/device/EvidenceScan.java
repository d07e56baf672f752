package brightseam.device;

import java.util.ArrayList;
import java.util.List;

/** One pass over the readings of a stretch by the rules of {@link SeriesEvidence}. */
final class EvidenceScan {

    private final long from;
    private final long to;
    private final double limit;
    private final long longestGap;
    private final List<SeriesEvidence.Excursion> excursions = new ArrayList<>();
    private final List<SeriesEvidence.Gap> gaps = new ArrayList<>();
    private double area;
    private long covered;
    private double sum;
    private double highest = Double.NaN;
    private int doubtful;
    private boolean above;
    private long aboveSince;
    private double peak;
    private int size;

    EvidenceScan(long from, long to, double limit, long longestGap) {
        this.from = from;
        this.to = to;
        this.limit = limit;
        this.longestGap = longestGap;
    }

    /** Looks at every reading of {@code series}, which lies within the stretch. */
    void over(Series series) {
        size = series.size();
        if (size == 0) {
            gap(from, to);
            return;
        }
        begin(series);
        for (int i = 1; i < size; i++) {
            between(series.millis(i - 1), series.value(i - 1), series.millis(i), series.value(i));
            reading(series, i);
        }
        end(series.millis(size - 1), series.value(size - 1));
    }

    private void begin(Series series) {
        long time = series.millis(0);
        boolean held = time - from <= longestGap;
        if (held) {
            hold(time - from, series.value(0));
        } else {
            gap(from, time);
        }
        if (series.value(0) > limit) {
            rise(held ? from : time, series.value(0));
        }
        reading(series, 0);
    }

    private void reading(Series series, int index) {
        double value = series.value(index);
        highest = index == 0 ? value : Math.max(highest, value);
        sum += value;
        doubtful += series.isUsable(index) ? 0 : 1;
        peak = above ? Math.max(peak, value) : peak;
    }

    private void between(long start, double first, long end, double second) {
        if (end - start > longestGap) {
            fall(start);
            gap(start, end);
            if (second > limit) {
                rise(end, second);
            }
            return;
        }
        area += (first + second) / 2 * (end - start);
        covered += end - start;
        if (first <= limit && second > limit) {
            rise((long) Math.floor(crossing(start, first, end, second)), second);
        } else if (first > limit && second <= limit) {
            fall((long) Math.ceil(crossing(start, first, end, second)));
        }
    }

    /** Where the straight line between two readings meets the limit. */
    private double crossing(long start, double first, long end, double second) {
        return start + (end - start) * ((limit - first) / (second - first));
    }

    private void end(long last, double value) {
        boolean held = to - last <= longestGap;
        if (held) {
            hold(to - last, value);
        }
        fall(held ? to : last);
        if (!held) {
            gap(last, to);
        }
    }

    private void hold(long millis, double value) {
        area += value * millis;
        covered += millis;
    }

    private void rise(long at, double value) {
        above = true;
        aboveSince = at;
        peak = value;
    }

    private void fall(long at) {
        if (above) {
            excursions.add(new SeriesEvidence.Excursion(aboveSince, at, peak));
            above = false;
        }
    }

    private void gap(long start, long end) {
        gaps.add(new SeriesEvidence.Gap(start, end));
    }

    double highest() {
        return highest;
    }

    /** Over the covered time; where single readings cover none, their plain mean. */
    double mean() {
        return covered > 0 ? area / covered : size > 0 ? sum / size : Double.NaN;
    }

    int doubtful() {
        return doubtful;
    }

    long millisAbove() {
        return excursions.stream().mapToLong(SeriesEvidence.Excursion::millis).sum();
    }

    List<SeriesEvidence.Excursion> excursions() {
        return excursions;
    }

    List<SeriesEvidence.Gap> gaps() {
        return gaps;
    }
}
