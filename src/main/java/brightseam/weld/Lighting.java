package brightseam.weld;

import brightseam.kernel.SupplyId;
import java.math.BigDecimal;

/**
 * The light that a joint was looked at in.
 *
 * @param lux measured at the joint
 * @param meter the light meter that measured it
 */
public record Lighting(BigDecimal lux, SupplyId meter) {

    /** Refuses less than none. */
    public Lighting {
        if (lux.signum() < 0) {
            throw new IllegalArgumentException("light: not below zero");
        }
    }
}
