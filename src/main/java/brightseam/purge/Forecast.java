package brightseam.purge;

import java.util.List;

/**
 * When the meter will show the limit, if the flow stays as it is.
 *
 * @param minutes from the last readings on, with a band of 90 %; zero where it shows the limit already
 * @param gasLitres let in until then at this flow, at the chamber's pressure and temperature, with the same band
 * @param band what the meter will show, for the chart
 */
public record Forecast(Estimate minutes, Estimate gasLitres, List<BandPoint> band) {

    /** Keeps its own copy of {@code band}. */
    public Forecast {
        band = List.copyOf(band);
    }

    /**
     * One time of the chart's band.
     *
     * @param seconds on the measured curve's own clock
     * @param lowPpm below it with a chance of 5 %
     * @param middlePpm as likely above as below
     * @param highPpm above it with a chance of 5 %
     */
    public record BandPoint(double seconds, double lowPpm, double middlePpm, double highPpm) {}
}
