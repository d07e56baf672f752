package brightseam.demo;

import brightseam.chamber.ArgonFlows;
import brightseam.chamber.ChamberLimits;
import brightseam.chamber.ChamberTerms;
import brightseam.chamber.CitedLimit;
import brightseam.chamber.LockGear;
import brightseam.chamber.LockMethod;
import brightseam.chamber.Manifold;
import brightseam.chamber.UsualSession;
import brightseam.kernel.StationId;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The demo's chamber as its register says it. Limits are common practice, the rest is invented. */
final class DemoChamber {

    static final StationId STATION = new StationId("S-CHAMBER-1");
    static final StationId LOCK = new StationId("S-LOCK-1");
    static final BigDecimal ROOM_CELSIUS = new BigDecimal("20.5");

    private static final String PRACTICE = "common practice";
    private static final String INVENTED = "invented for the demo";

    private DemoChamber() {}

    static ChamberTerms terms() {
        return new ChamberTerms(new BigDecimal("1150"), new BigDecimal("18"),
                new LockGear(LOCK, new BigDecimal("85"), LockMethod.sweep(Duration.ofMinutes(12)),
                        limit("100", INVENTED)),
                new ArgonFlows(new BigDecimal("120"), new BigDecimal("30"), new BigDecimal("40"), ROOM_CELSIUS),
                new ChamberLimits(limit("30", PRACTICE), limit("40", PRACTICE), limit("50", INVENTED),
                        Duration.ofMinutes(2), Duration.ofSeconds(10), Duration.ofMinutes(5), INVENTED),
                new Manifold(2, new BigDecimal("5"), Optional.empty(), new BigDecimal("5"), INVENTED),
                new UsualSession(Duration.ofHours(4), 2),
                new TreeSet<>(List.of("titanium", "stainless-steel", "copper", "tungsten", "alumina", "glass",
                        "cotton", "nitrile", "butyl-rubber")));
    }

    private static CitedLimit limit(String value, String source) {
        return new CitedLimit(new BigDecimal(value), source);
    }
}
