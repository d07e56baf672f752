package brightseam.device;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Meters for tests. All of them are invented. */
public final class SampleMeters {

    /** A fast oxygen meter. */
    public static final SupplyId OXYGEN = new SupplyId("G-0601");
    /** The chamber that it looks at. */
    public static final StationId CHAMBER = new StationId("S-CHAMBER-1");
    /** Who keeps meters. */
    public static final Signer LEAD = signer(Role.LEAD);

    private SampleMeters() {}

    /** Oxygen in the chamber, 0 to 1000 ppm in steps of 0.1, ten readings a second. */
    public static Meter oxygen(Feed feed) {
        return new Meter(OXYGEN, CHAMBER, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM, 0, 1000, 0.1,
                Duration.ofMillis(100), Duration.ofSeconds(8), feed);
    }

    /** Its terms. */
    public static MeterTerms terms(Feed feed) {
        return MeterTerms.of(oxygen(feed));
    }

    /** A value of a device that speaks Modbus, on this machine. */
    public static ModbusPoint point(int port, int register, RegisterKind kind, String scale) {
        return new ModbusPoint("127.0.0.1", port, 1, false, register, kind, new BigDecimal(scale), BigDecimal.ZERO);
    }

    /** Somebody with {@code role}. */
    public static Signer signer(Role role) {
        return new Signer(new BadgeId("P-0101"), "Ivo Marsh", List.of(role), Optional.empty(), "badge+pin");
    }
}
