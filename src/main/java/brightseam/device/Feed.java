package brightseam.device;

import java.time.Duration;

/** How a meter's readings come in. */
public sealed interface Feed {

    /** The device sends them over HTTP, with its token. */
    record Http() implements Feed {}

    /** They are asked from the device over Modbus TCP. */
    record Modbus(ModbusPoint point) implements Feed {}

    /**
     * A person types them.
     *
     * @param interval the longest time from one to the next
     */
    record Typed(Duration interval) implements Feed {
        /** Refuses an interval that is not above zero. */
        public Typed {
            if (interval.isNegative() || interval.isZero()) {
                throw new IllegalArgumentException("interval: above zero");
            }
        }
    }

    /** A program makes them up; every one is marked. */
    record Simulated() implements Feed {}
}
