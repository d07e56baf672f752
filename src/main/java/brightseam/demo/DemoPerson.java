package brightseam.demo;

import brightseam.kernel.BadgeId;
import brightseam.people.Role;
import java.util.List;
import java.util.Optional;

/** The people of the demo shop, all invented. Their PINs are printed at the start and protect nothing. */
public enum DemoPerson {
    /** Keeps the shop's registers. */
    ODA_MARSH("P-0001", "Oda Marsh", Role.ADMINISTRATOR, "730164", Optional.empty(), List.of(),
            "people, bins, stations, heats, procedures, labels"),
    /** May do every step. */
    ILKA_FERROW("P-0101", "Ilka Ferrow", Role.FABRICATOR, "482615", Optional.empty(),
            List.of("pickle-tank", "transfer-lock"), "the bench; qualified for the pickle tank and the lock"),
    /** Is not qualified for the transfer lock. */
    JUNO_CASTELL("P-0102", "Juno Castell", Role.FABRICATOR, "593726", Optional.empty(), List.of("pickle-tank"),
            "the bench; not qualified for the transfer lock"),
    /** Welds, and takes kits through the chamber. */
    RHEA_TOLLAND("P-0103", "Rhea Tolland", Role.FABRICATOR, "947260", Optional.empty(),
            List.of("chamber", "transfer-lock", "weld"), "the chamber: sessions, lock, joints; qualified to weld"),
    /** Welded until the qualification ran out three days ago. */
    CORIN_VASSE("P-0104", "Corin Vasse", Role.FABRICATOR, "358471", Optional.empty(),
            List.of("chamber", "transfer-lock"), List.of("weld"), "the chamber; the qualification to weld is over"),
    /** Releases kits. */
    BRAM_ODUYA("P-0201", "Bram Oduya", Role.LEAD, "614837", Optional.empty(), List.of(),
            "the board, releasing kits, rework"),
    /** Stamps. */
    SANNA_VEIT("P-0301", "Sanna Veit", Role.INSPECTOR, "725948", Optional.of("BS-07"), List.of(),
            "the stamp desk; holds stamp BS-07"),
    /** Keeps the baths. */
    TESSA_QUARLE("P-0401", "Tessa Quarle", Role.PROCESS_CONTROL, "836159", Optional.empty(), List.of(),
            "the baths: analyses, additions, locks");

    private final BadgeId badge;
    private final String fullName;
    private final Role role;
    private final String pin;
    private final Optional<String> stamp;
    private final List<String> qualifications;
    private final List<String> runOut;
    private final String purpose;

    DemoPerson(String badge, String fullName, Role role, String pin, Optional<String> stamp,
            List<String> qualifications, String purpose) {
        this(badge, fullName, role, pin, stamp, qualifications, List.of(), purpose);
    }

    DemoPerson(String badge, String fullName, Role role, String pin, Optional<String> stamp,
            List<String> qualifications, List<String> runOut, String purpose) {
        this.badge = new BadgeId(badge);
        this.fullName = fullName;
        this.role = role;
        this.pin = pin;
        this.stamp = stamp;
        this.qualifications = List.copyOf(qualifications);
        this.runOut = List.copyOf(runOut);
        this.purpose = purpose;
    }

    /** The badge. */
    public BadgeId badge() {
        return badge;
    }

    /** The printed name. */
    public String fullName() {
        return fullName;
    }

    /** The one role. */
    public Role role() {
        return role;
    }

    /** The PIN. */
    public String pin() {
        return pin;
    }

    /** What the badge is good for in the tour, in a few words. */
    public String purpose() {
        return purpose;
    }

    Optional<String> stamp() {
        return stamp;
    }

    List<String> qualifications() {
        return qualifications;
    }

    /** What the person was qualified for until shortly before the demo begins. */
    List<String> runOut() {
        return runOut;
    }
}
