package brightseam.session;

import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The gas in the closed chamber.
 *
 * @param purge the last purge; empty where none was begun
 * @param fit since when it is fit to weld; empty where it is not
 * @param unfit why it stopped being fit; empty where it never was, or is
 * @param unfitAt when it stopped being fit
 */
public record Gas(Optional<Purge> purge, Optional<Fit> fit, List<Broken> unfit, Optional<Moment> unfitAt) {

    /** Copies the list. */
    public Gas {
        unfit = List.copyOf(unfit);
    }

    /**
     * Fit to weld, by readings.
     *
     * @param since the first reading of the run that lies inside every limit
     * @param notedAt when the server noted it
     * @param oxygenPpm the last reading of oxygen then
     * @param moisturePpm the last reading of moisture then, where one is asked for
     */
    public record Fit(Moment since, Moment notedAt, BigDecimal oxygenPpm, Optional<BigDecimal> moisturePpm) {}

    /** Air, never purged. */
    static Gas air() {
        return new Gas(Optional.empty(), Optional.empty(), List.of(), Optional.empty());
    }

    /** What the readings have to keep to; empty where no purge was begun. */
    public Optional<GasLimits> limits() {
        return purge.map(Purge::limits);
    }
}
