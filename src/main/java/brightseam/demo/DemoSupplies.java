package brightseam.demo;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** What stands in the demo shop's cupboard, makers and lots invented; three things in it must not be used. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class DemoSupplies {

    private static final String CLOTHS = "Fennmark Textiles (invented)";
    private static final String CHEMICALS = "Ostrand Chemicals (invented)";
    private static final String TOOLS = "Kelder Tools (invented)";
    private static final String GAUGES = "Vantwick Gauges (invented)";

    static final SupplyId LIGHT_METER = new SupplyId("G-0507");

    private final Supplies supplies;
    private final Vocabulary vocabulary;
    private final Crew crew;

    DemoSupplies(Supplies supplies, Vocabulary vocabulary, Crew crew) {
        this.supplies = supplies;
        this.vocabulary = vocabulary;
        this.crew = crew;
    }

    /** Fills the cupboard. */
    void fill() {
        gloves();
        clothsAndSolvents();
        tools();
        gauges();
        forTheChamber();
    }

    /** Registers {@code meter} as a gauge with its calibration. */
    void gauge(DemoMeter meter) {
        lot(meter.label().value(), meter.type(), meter.title(), meter.serial(), GAUGES, meter.daysCalibrated());
    }

    private void gloves() {
        lot("G-0101", "clean-nitrile", "Nitrile gloves, box of 100", "FN-3107", CLOTHS, 400);
        lot("G-0102", "clean-nitrile", "Nitrile gloves, box of 100", "FN-3121", CLOTHS, 520);
        lot("G-0103", "white-cotton", "Cotton gloves, 12 pairs", "FC-0884", CLOTHS, 700);
        lot("G-0104", "cut-resistant", "Cut-resistant gloves", "FR-0412", CLOTHS, 900);
    }

    private void clothsAndSolvents() {
        lot("G-0201", "lint-free-cloth", "Lint-free cloths, pack of 50", "FL-5519", CLOTHS, 600);
        lot("G-0202", "white-cloth", "White cloths, pack of 100", "FW-2203", CLOTHS, 600);
        lot("G-0211", "acetone", "Acetone, 1 litre bottle", "OA-7714", CHEMICALS, 9);
        lot("G-0212", "acetone", "Acetone, 1 litre bottle, old", "OA-6902", CHEMICALS, -20);
        lot("G-0213", "isopropyl-alcohol", "Isopropyl alcohol, 1 litre bottle", "OI-4410", CHEMICALS, 240);
        lot("G-0221", "polyethylene-bag", "Polyethylene bags, 300 x 900 mm", "FP-1190", CLOTHS, 1_000);
    }

    private void tools() {
        kept("G-0301", "saw-blade", "Saw blade, 14 teeth to the inch", "KB-118");
        kept("G-0302", "hole-cutter", "Hole cutter, 38 mm", "KH-038");
        kept("G-0303", "carbide-burr", "Carbide burr, green band", "KC-071");
        kept("G-0304", "stainless-brush", "Stainless brush, green handle", "KS-204");
        kept("G-0305", "stainless-brush", "Stainless brush, found at the steel bench", "KS-199");
        kept("G-0306", "wire-cutter", "Wire cutter, green handles", "KW-012");
        kept("G-0307", "abrasive-cloth", "Aluminium oxide cloth, new roll", "KA-905");
        Crew.done(supplies.execute(new SupplyCommand.ReportContaminated(new SupplyId("G-0305"),
                "Brushed a carbon steel fixture", crew.origin(DemoPerson.BRAM_ODUYA))));
    }

    private void gauges() {
        lot("G-0401", "caliper", "Caliper, 150 mm", "VC-2210", GAUGES, 150);
        lot("G-0402", "caliper", "Caliper, 300 mm", "VC-1874", GAUGES, -3);
        lot("G-0403", "feeler-gauge", "Feeler gauges, 0.03 to 0.50 mm", "VF-0631", GAUGES, 220);
        lot("G-0404", "pin-gauge", "Pin gauges, 1.0 to 4.0 mm", "VP-0090", GAUGES, 310);
        lot("G-0405", "micrometer", "Micrometer, 0 to 25 mm", "VM-3318", GAUGES, 95);
    }

    /** What goes into the chamber beside the kit; the clamp and the tape must not. */
    private void forTheChamber() {
        lot(LIGHT_METER.value(), "light-meter", "Light meter, stamp desk", "VX-0118", GAUGES, 210);
        kept("G-0701", "stainless-fixture", "Frame jig, stainless", "KF-310");
        kept("G-0702", "stainless-lock-tray", "Lock tray, stainless", "KT-021");
        kept("G-0703", "tungsten-electrode", "Tungsten electrode, 2.4 mm", "KE-1181");
        kept("G-0704", "tungsten-electrode", "Tungsten electrode, 2.4 mm", "KE-1182");
        kept("G-0705", "titanium-fixture", "Heel blocks, titanium", "KF-044");
        kept("G-0706", "copper-chill", "Copper chill, 38 mm tube", "KC-138");
        kept("G-0707", "ceramic-cup", "Ceramic cup, number 8", "KU-008");
        kept("G-0708", "aluminium-fixture", "Clamp, aluminium", "KF-902");
        kept("G-0709", "adhesive-tape", "PVC tape, grey, one roll", "KV-550");
        lot("G-0105", "white-cotton", "Cotton gloves for the chamber, dried, pair", "FC-0885", CLOTHS, 700);
        lot("G-0106", "white-cotton", "Cotton gloves for the chamber, dried, pair", "FC-0885", CLOTHS, 700);
    }

    private void kept(String id, String type, String title, String number) {
        register(id, type, title, number, TOOLS, Optional.empty());
    }

    private void lot(String id, String type, String title, String lot, String maker, int daysLeft) {
        LocalDate today = Supplies.day(crew.origin(DemoPerson.ODA_MARSH).at());
        register(id, type, title, lot, maker, Optional.of(today.plusDays(daysLeft)));
    }

    private void register(String id, String type, String title, String lot, String maker, Optional<LocalDate> last) {
        Origin origin = crew.origin(DemoPerson.ODA_MARSH);
        Vocabulary.SupplyType known = vocabulary.supplies().get(type);
        Set<Surface> keptFor = known.mayTouch();
        Crew.done(supplies.execute(new SupplyCommand.RegisterSupply(
                new SupplyId(id), known, title, lot, maker, last, keptFor, origin)));
        if (known.kind() != ContactKind.TOOL && known.kind() != ContactKind.GAUGE) {
            Crew.done(supplies.execute(new SupplyCommand.OpenSupply(new SupplyId(id), origin)));
        }
    }
}
