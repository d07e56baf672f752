package brightseam.ui.parts;

import brightseam.chart.SeriesChart;

/** A drawing that was made elsewhere: a meter's series, a picture of a place. */
public record Drawn(String svg, String words) implements Drawing {

    /** A meter's series. */
    public static Drawn of(SeriesChart chart) {
        return new Drawn(chart.svg(), chart.words());
    }
}
