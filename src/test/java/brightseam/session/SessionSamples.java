package brightseam.session;

import static brightseam.kernel.Samples.origin;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
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

/** Things, people and facts of one invented session, with nothing against them. */
abstract class SessionSamples {

    static final SessionId ID = new SessionId("CS-0012");
    static final KitId KIT = new KitId("K-0047");
    static final StationId CHAMBER = new StationId("S-CHAMBER-1");
    static final StationId LOCK = new StationId("S-LOCK-1");
    static final SupplyId O2 = new SupplyId("G-0901");
    static final SupplyId H2O = new SupplyId("G-0902");
    static final SupplyId LOCK_O2 = new SupplyId("G-0903");
    static final SupplyId ROOM = new SupplyId("G-0904");
    static final SupplyId ARGON = new SupplyId("A-0311");
    static final Signer FABRICATOR = signer("P-0101", "Iva Roen", Role.FABRICATOR);
    static final Signer LEAD = signer("P-0201", "Bram Oduya", Role.LEAD);
    static final Signer INSPECTOR = signer("P-0301", "Sanne Hult", Role.INSPECTOR);
    static final Item LEG = new Item(Item.Kind.PARTS, "T-1042", "TUBE", "Leg, upper tube", 4);
    static final Item LUG = new Item(Item.Kind.PARTS, "T-1043", "FITTING", "Release bail lug", 2);
    static final Item WIRE = new Item(Item.Kind.FILLER, "T-1044", "FILLER", "Filler rods", 40);
    static final Item TRAY = supply("TL-0001", "stainless-lock-tray");
    static final Item GLOVES_A = supply("G-0031", "white-cotton");
    static final Item GLOVES_B = supply("G-0032", "white-cotton");
    static final List<Need> NEEDS = List.of(need(LEG), need(LUG), need(WIRE),
            new Need(Item.Kind.SUPPLY, "stainless-lock-tray", "Tray", 1),
            new Need(Item.Kind.SUPPLY, "white-cotton", "White cotton gloves", 2));
    static final GasLimits LIMITS = new GasLimits(new BigDecimal("20"), Optional.of(new BigDecimal("50")),
            Duration.ofMinutes(5), Duration.ofSeconds(10));
    static final Duration PURGE_AND_WORK = Duration.ofHours(5);

    static ItemFact fact(Item item, Refusal... objections) {
        boolean parts = item.hasTraveller();
        return new ItemFact(item, parts ? Optional.of(KIT) : Optional.empty(),
                parts ? Optional.of("9") : Optional.empty(),
                parts ? Optional.of(Duration.ofHours(30)) : Optional.empty(), false, Optional.empty(),
                List.of(objections));
    }

    static LockNeed sweep() {
        return new LockNeed(LockNeed.Method.SWEEP, Duration.ofMinutes(10), 0, new BigDecimal("50"), Optional.empty());
    }

    static LockNeed cycles(int cycles) {
        return new LockNeed(LockNeed.Method.VACUUM_CYCLES, Duration.ZERO, cycles, new BigDecimal("50"),
                Optional.empty());
    }

    static LockNeed byMeter() {
        return new LockNeed(LockNeed.Method.SWEEP, Duration.ofMinutes(10), 0, new BigDecimal("50"),
                Optional.of(LOCK_O2));
    }

    static MeterFact meter(SupplyId id, String value, String... troubles) {
        return new MeterFact(
                id, Optional.of(new BigDecimal(value)), Optional.of(origin(0).at()), Arrays.asList(troubles), true);
    }

    static ArgonFact argon(String left, String needed, String oxygenPpm, String moisturePpm) {
        return new ArgonFact(ARGON, "LOT 5", new BigDecimal(left), new BigDecimal(needed), new BigDecimal(oxygenPpm),
                new BigDecimal(moisturePpm));
    }

    static OpeningFact opening(Optional<MeterFact> room, boolean cautionsRead, Refusal... joints) {
        return new OpeningFact(List.of(joints), room, cautionsRead);
    }

    static ListFact list(List<Need> needs) {
        return new ListFact(needs, new TreeSet<>(List.of("9")), PURGE_AND_WORK);
    }

    static Need need(Item item) {
        return new Need(item.kind(), item.label(), item.title(), 1);
    }

    static Item supply(String label, String type) {
        return new Item(Item.Kind.SUPPLY, label, type, type.replace('-', ' '), 1);
    }

    private static Signer signer(String badge, String name, Role role) {
        return new Signer(new BadgeId(badge), name, List.of(role), Optional.empty(), "badge+pin");
    }
}
