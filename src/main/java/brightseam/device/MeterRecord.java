package brightseam.device;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the register knows of one meter.
 *
 * @param meter as it is installed
 * @param outOfUse why it is out of use; empty while it is in use
 * @param token when a token for its device was made last, where one was
 * @param typed the last reading that a person typed
 */
public record MeterRecord(
        Meter meter, Optional<String> outOfUse, Optional<Moment> token, Optional<TypedReading> typed) {

    /** A typed reading: what, who and when. */
    public record TypedReading(BigDecimal value, BadgeId by, Moment at) {}

    /** The record after {@code event}; {@code before} is empty for the first one only. */
    public static MeterRecord evolve(Optional<MeterRecord> before, MeterEvent event) {
        return switch (event) {
            case MeterEvent.Registered e -> new MeterRecord(
                    e.terms().meter(e.meter()), Optional.empty(), Optional.empty(), Optional.empty());
            case MeterEvent.TermsChanged e -> known(before, e).with(e.terms().meter(e.meter()));
            case MeterEvent.TokenMade e -> known(before, e).with(e.origin().at());
            case MeterEvent.ReadingTyped e -> known(before, e).with(
                    new TypedReading(e.value(), e.origin().by(), e.origin().at()));
            case MeterEvent.TakenOutOfUse e -> known(before, e).outOfUse(Optional.of(e.reason()));
            case MeterEvent.PutBackIntoUse e -> known(before, e).outOfUse(Optional.empty());
        };
    }

    /** Whether it is in use. */
    public boolean isInUse() {
        return outOfUse.isEmpty();
    }

    /** When the next reading has to be typed; empty where none is typed or none ever was. */
    public Optional<Moment> nextTypedDue() {
        return meter.feed() instanceof Feed.Typed feed
                ? typed.map(last -> last.at().plus(feed.interval())) : Optional.empty();
    }

    private static MeterRecord known(Optional<MeterRecord> before, MeterEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not registered: " + event.meter()));
    }

    private MeterRecord with(Meter next) {
        return new MeterRecord(next, outOfUse, token, typed);
    }

    private MeterRecord with(Moment tokenMade) {
        return new MeterRecord(meter, outOfUse, Optional.of(tokenMade), typed);
    }

    private MeterRecord with(TypedReading last) {
        return new MeterRecord(meter, outOfUse, token, Optional.of(last));
    }

    private MeterRecord outOfUse(Optional<String> reason) {
        return new MeterRecord(meter, reason, token, typed);
    }
}
