package brightseam.demo;

import brightseam.chamber.ArgonPurity;
import brightseam.chamber.ArgonVessel;
import brightseam.kernel.SupplyId;
import java.math.BigDecimal;

/** The argon in the demo's yard, gas works and certificates invented. */
enum DemoArgon {
    /** Feeds the chamber. */
    BUNDLE("G-0601", "Argon bundle, 12 x 50 L", "AG-31177", 300,
            ArgonVessel.bundle(new BigDecimal("600"), new BigDecimal("200")), "148", new Gas("1.5", "3", "HC-90211")),
    /** Full. */
    CYLINDER("G-0602", "Argon cylinder, 50 L", "AG-31240", 420,
            ArgonVessel.cylinder(new BigDecimal("50"), new BigDecimal("200")), "196", new Gas("1.5", "3", "HC-90217")),
    /** Nearly empty. */
    LAST_CYLINDER("G-0603", "Argon cylinder, 50 L, begun", "AG-30981", 90,
            ArgonVessel.cylinder(new BigDecimal("50"), new BigDecimal("200")), "41", new Gas("1.5", "3", "HC-89902")),
    /** Liquid. */
    DEWAR("G-0604", "Argon dewar, 180 L", "AG-31302", 60,
            ArgonVessel.dewar(new BigDecimal("180"), new BigDecimal("1.6")), "72", new Gas("1.0", "2", "HC-90233")),
    /** Of a grade for steel: its certificate admits too much oxygen and water for titanium. */
    WRONG_GRADE("G-0605", "Argon cylinder, 50 L, for the steel shop", "AG-30770", 200,
            ArgonVessel.cylinder(new BigDecimal("50"), new BigDecimal("200")), "190", new Gas("45", "70", "HC-88514"));

    private final SupplyId label;
    private final String title;
    private final String lot;
    private final int daysLeft;
    private final ArgonVessel vessel;
    private final BigDecimal read;
    private final Gas gas;

    /** What a certificate says, ppm by volume, and its number. */
    private record Gas(String oxygenPpm, String moisturePpm, String certificate) {}

    DemoArgon(String label, String title, String lot, int daysLeft, ArgonVessel vessel, String read, Gas gas) {
        this.label = new SupplyId(label);
        this.title = title;
        this.lot = lot;
        this.daysLeft = daysLeft;
        this.vessel = vessel;
        this.read = new BigDecimal(read);
        this.gas = gas;
    }

    /** Its label. */
    SupplyId label() {
        return label;
    }

    /** What people call it. */
    String title() {
        return title;
    }

    /** The gas works' lot. */
    String lot() {
        return lot;
    }

    /** Days until the gas works want it back. */
    int daysLeft() {
        return daysLeft;
    }

    /** What it comes in. */
    ArgonVessel vessel() {
        return vessel;
    }

    /** Bar above the atmosphere, or percent of a full dewar, when it was delivered. */
    BigDecimal read() {
        return read;
    }

    /** What its certificate says. */
    ArgonPurity purity() {
        return new ArgonPurity(new BigDecimal(gas.oxygenPpm()), new BigDecimal(gas.moisturePpm()), gas.certificate());
    }
}
