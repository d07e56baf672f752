package brightseam.chamber;

import static brightseam.kernel.Samples.origin;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** A chamber of 800 litres with its gear and argon, for the tests of chambers. */
public final class Gear {

    public static final StationId CHAMBER = new StationId("S-CHAMBER-1");
    public static final StationId LOCK = new StationId("S-LOCK-1");
    public static final SupplyId BUNDLE = new SupplyId("G-0601");
    public static final SupplyId DEWAR = new SupplyId("G-0602");
    public static final Signer CHEMIST = signer("P-0401", Role.PROCESS_CONTROL);
    public static final Signer LEAD = signer("P-0201", Role.LEAD);
    public static final Signer FABRICATOR = signer("P-0101", Role.FABRICATOR);
    public static final Signer INSPECTOR = signer("P-0301", Role.INSPECTOR);
    public static final ArgonPurity PURE = new ArgonPurity(decimal("2"), decimal("3"), "C-7781");
    public static final Materials MATERIALS = Materials.of(List.of(
            new Material("stainless-steel", "stainless steel", Material.Gas.NONE, false, "Fixtures."),
            new Material("cotton", "cotton", Material.Gas.LITTLE, false, "Dry."),
            new Material("paper", "paper", Material.Gas.MUCH, false, "Sheds fibres."),
            new Material("pvc", "PVC", Material.Gas.MUCH, true, "Chlorine."),
            new Material("carbon-steel", "carbon steel", Material.Gas.NONE, true, "Iron.")));

    private Gear() {}

    /** Its terms, permitting {@code materials}. */
    public static ChamberTerms terms(String... materials) {
        return new ChamberTerms(decimal("800"), decimal("24"),
                new LockGear(LOCK, decimal("40"), LockMethod.vacuumCycles(decimal("0.1")), limit("100")),
                new ArgonFlows(decimal("60"), decimal("8"), decimal("20"), decimal("20")),
                new ChamberLimits(limit("30"), limit("50"), limit("40"), Duration.ofMinutes(5),
                        Duration.ofSeconds(10), Duration.ofMinutes(5), "common practice"),
                new Manifold(2, decimal("5"), Optional.empty(), decimal("5"), "common practice"),
                new UsualSession(Duration.ofHours(3), 2), new TreeSet<>(Arrays.asList(materials)));
    }

    /** The chamber with {@code connected} on its manifold and no leak test. */
    public static Chamber chamber(SupplyId... connected) {
        return new Chamber(CHAMBER, terms("stainless-steel"), List.of(connected), Optional.empty(), new TreeSet<>());
    }

    /** The same with air leaking in. */
    public static Chamber leaking(Chamber chamber, String airLitresPerMinute) {
        return new Chamber(chamber.station(), chamber.terms(), chamber.connected(), Optional.of(new LeakTest(
                at(0), decimal(airLitresPerMinute), Optional.empty(), "rise test", "Somebody")), chamber.counted());
    }

    /** A bundle of twelve cylinders of 50 litres, read at {@code bar} and 15 °C. */
    public static ArgonSource bundle(String bar) {
        return new ArgonSource(BUNDLE, ArgonVessel.bundle(decimal("600"), decimal("200")), PURE,
                Optional.of(ArgonReading.pressure(at(0), decimal(bar), decimal("15"))), Optional.empty(),
                ArgonSource.Standing.IN_USE);
    }

    /** A dewar of 180 litres that loses 2 % a day, read at {@code percent}. */
    public static ArgonSource dewar(String percent) {
        return new ArgonSource(DEWAR, ArgonVessel.dewar(decimal("180"), decimal("2")), PURE,
                Optional.of(ArgonReading.level(at(0), decimal(percent))), Optional.empty(),
                ArgonSource.Standing.IN_USE);
    }

    /** The moment {@code seconds} after eight. */
    public static Moment at(long seconds) {
        return origin(seconds).at();
    }

    public static BigDecimal decimal(String value) {
        return new BigDecimal(value);
    }

    public static CitedLimit limit(String value) {
        return new CitedLimit(decimal(value), "common practice");
    }

    /** The codes of the rules that {@code decision} breaks. */
    static List<String> codes(Decision<?> decision) {
        return switch (decision) {
            case Decision.Accepted<?> accepted -> List.of();
            case Decision.Refused<?> refused -> refused.refusals().stream().map(one -> one.code()).toList();
        };
    }

    private static Signer signer(String badge, Role role) {
        return new Signer(new BadgeId(badge), "Somebody", List.of(role), Optional.empty(), "badge+pin");
    }
}
