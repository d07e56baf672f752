package brightseam.purge;

import java.util.Optional;
import java.util.OptionalDouble;

/** What a measured curve says of the limit while the purge goes on. */
public sealed interface PurgeOutlook {

    /** A verdict is given when its chance is at least this; the band of a forecast is 5 to 95 %. */
    double CHANCE_SURE = 0.95;

    /**
     * Nothing can be said yet.
     *
     * @param why what is missing
     * @param minutesAtLeast not before that, with a chance of 95 %, where the curve tells so much
     * @param chanceOfReaching that the limit is reached at this flow; NaN where there is no fit
     */
    record TooEarly(Why why, OptionalDouble minutesAtLeast, double chanceOfReaching) implements PurgeOutlook {}

    /** The limit will be reached. */
    record OnCourse(Forecast forecast, PurgeFit fit) implements PurgeOutlook {}

    /**
     * The curve flattens above the limit, and more time will not help.
     *
     * <p>One curve cannot tell a leak from impure gas, because both only raise the level; {@link LevelCause} may, with
     * a curve of moisture beside one of oxygen.
     *
     * @param levelPpm where it flattens
     * @param leakAirLitresPerMinute the leak that would do so, with the supply as its certificate says
     * @param supplyPpmInstead the ppm that the supply would have to have, with no leak at all
     */
    record LevelsOff(Estimate levelPpm, Estimate leakAirLitresPerMinute, Estimate supplyPpmInstead, PurgeFit fit)
            implements PurgeOutlook {}

    /** Why nothing can be said. */
    enum Why {
        /** Fewer than ten means of readings inside the meter's range. */
        TOO_FEW_READINGS,
        /** Nothing flows now. */
        NO_FLOW,
        /** The readings have not fallen by a tenth yet and are still near air's. */
        NOT_FALLING,
        /** The curve does not bend as one well mixed volume does: a door, a flow that was not told, a spike. */
        DOES_NOT_FIT,
        /** Falling, but the end of it may as well lie above the limit as below. */
        LEVEL_NOT_TOLD
    }

    /**
     * The outlook of a curve.
     *
     * <p>Never throws for readings, however odd; it says {@code TooEarly} instead.
     *
     * @param expected what is believed of the leak beforehand, if anything
     */
    static PurgeOutlook of(
            PurgeRun run, MeterTraits meter, MeasuredCurve curve, double limitPpm, Optional<LeakExpected> expected) {
        Quantity.between("limit in ppm", limitPpm, 0, 1e6);
        return OutlookRules.outlook(run, meter, curve, limitPpm, expected);
    }
}
