package brightseam.device;

import java.time.Duration;
import java.util.Optional;

/**
 * How a meter's readings come in, as it is written down.
 *
 * @param kind which way
 * @param modbus where the value lies; for {@link Kind#MODBUS} and for nothing else
 * @param interval the longest time between typed readings; for {@link Kind#TYPED} and for nothing else
 */
public record FeedTerms(Kind kind, Optional<ModbusPoint> modbus, Optional<Duration> interval) {

    /** The ways; see {@link Feed}. */
    public enum Kind {
        /** {@link Feed.Http}. */
        HTTP,
        /** {@link Feed.Modbus}. */
        MODBUS,
        /** {@link Feed.Typed}. */
        TYPED,
        /** {@link Feed.Simulated}. */
        SIMULATED
    }

    /** Refuses parts that are missing or that belong to another way. */
    public FeedTerms {
        if (modbus.isPresent() != (kind == Kind.MODBUS) || interval.isPresent() != (kind == Kind.TYPED)) {
            throw new IllegalArgumentException("a Modbus point for Modbus, an interval for typed readings");
        }
    }

    /** The terms of {@code feed}. */
    public static FeedTerms of(Feed feed) {
        return switch (feed) {
            case Feed.Http http -> new FeedTerms(Kind.HTTP, Optional.empty(), Optional.empty());
            case Feed.Modbus(ModbusPoint point) -> new FeedTerms(Kind.MODBUS, Optional.of(point), Optional.empty());
            case Feed.Typed(Duration every) -> new FeedTerms(Kind.TYPED, Optional.empty(), Optional.of(every));
            case Feed.Simulated made -> new FeedTerms(Kind.SIMULATED, Optional.empty(), Optional.empty());
        };
    }

    /** The feed of these terms. */
    public Feed feed() {
        return switch (kind) {
            case HTTP -> new Feed.Http();
            case MODBUS -> new Feed.Modbus(modbus.orElseThrow());
            case TYPED -> new Feed.Typed(interval.orElseThrow());
            case SIMULATED -> new Feed.Simulated();
        };
    }
}
