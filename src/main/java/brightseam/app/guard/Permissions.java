package brightseam.app.guard;

import static brightseam.people.Role.ADMINISTRATOR;
import static brightseam.people.Role.FABRICATOR;
import static brightseam.people.Role.INSPECTOR;
import static brightseam.people.Role.LEAD;
import static brightseam.people.Role.PROCESS_CONTROL;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The table of what may be done by whom. What a page offers its readers, its service permits; what is not here, nobody
 * may. Steps, stamps and dispositions ask more of a signer in their own rules, by the step and by what was found.
 */
final class Permissions {

    private static final Map<String, Permit> TABLE = new HashMap<>();

    static {
        registers();
        baths();
        gear();
        kits();
        bench();
        inspection();
        chamber();
        insideOnly();
    }

    private Permissions() {}

    /** Who may do {@code deed}; nobody, where the table does not name it. A row for all of a feature is the last. */
    static Permit of(String deed) {
        Permit own = TABLE.get(deed);
        return own != null ? own : TABLE.getOrDefault(deed.replaceFirst("\\..*", ".*"), Permit.of());
    }

    /** Whether the table says anything of {@code deed}. */
    static boolean knows(String deed) {
        return TABLE.containsKey(deed) || TABLE.containsKey(deed.replaceFirst("\\..*", ".*"));
    }

    /** What the table names. */
    static Set<String> named() {
        return new TreeSet<>(TABLE.keySet());
    }

    private static void registers() {
        put(Permit.of(ADMINISTRATOR), "PersonCommand.*", "SystemCommand.*", "ShopSystems.makeToken",
                "Seals.rotate");
        put(Permit.everybody(), "People.setPin");
        put(Permit.of(ADMINISTRATOR, INSPECTOR), "PersonCommand.LoseStamp");
        Permit office = Permit.of(ADMINISTRATOR, LEAD);
        put(office, "BinCommand.*", "HeatCommand.*", "MeterCommand.*", "PartCommand.*", "StationCommand.*",
                "SupplyCommand.*", "FeedTokens.make", "ProcedureLibrary.approve");
        put(Permit.of(ADMINISTRATOR, FABRICATOR, INSPECTOR, LEAD), "Readings.type");
    }

    private static void baths() {
        put(Permit.of(PROCESS_CONTROL), "BathCommand.*", "ProcessControl.enterAnalysis");
        put(Permit.of(LEAD, PROCESS_CONTROL),
                "BathCommand.LockBath", "BathCommand.UnlockBath", "ProcessControl.findBad");
    }

    private static void gear() {
        put(Permit.of(LEAD, PROCESS_CONTROL), "ChamberCommand.RegisterChamber", "ChamberCommand.ChangeTerms",
                "ArgonStore.deliver", "ArgonCommand.DeclareEmpty", "ArgonCommand.Retire");
        put(Permit.of(FABRICATOR, LEAD, PROCESS_CONTROL), "ChamberCommand.RecordLeak", "ArgonCommand.EnterReading",
                "ArgonStore.changeOver", "ArgonWatch.changeOver");
    }

    private static void kits() {
        put(Permit.of(LEAD), "KitCommand.*", "Releases.release", "LinePlan.aim", "LinePlan.hands", "WeldMaps.draw",
                "WeldMaps.move", "WeldMaps.issue");
        put(Permit.of(INSPECTOR, LEAD), "Pictures.store");
    }

    private static void bench() {
        Permit hands = Permit.of(FABRICATOR);
        put(hands, "TravellerActions.putInBin", "TravellerActions.closeBin", "TravellerActions.openBin",
                "TravellerActions.cutHoldShort", "TravellerActions.reportGlovesSpent", "TravellerActions.changeGloves");
        put(hands.signedBy(FABRICATOR, LEAD), "TravellerActions.signStep", "TravellerActions.enterLate");
        put(Permit.of(FABRICATOR, INSPECTOR), "TravellerActions.startStep", "TravellerActions.beginHold",
                "TravellerActions.endHold", "TravellerActions.takeReading");
        put(Permit.of(FABRICATOR, INSPECTOR, LEAD), "LoadActions.takeOut", "TravellerActions.correctReading",
                "TravellerActions.reportTouch");
        put(Permit.everybody(), "TravellerActions.reportNonconformance", "TravellerActions.noteRefusal");
    }

    private static void inspection() {
        put(Permit.of(INSPECTOR), "InspectorActions.stamp", "InspectorActions.reject", "Joints.judge");
        put(Permit.of(INSPECTOR, LEAD), "InspectorActions.decide", "InspectorActions.decideTogether",
                "InspectorActions.setApart");
        put(Permit.of(INSPECTOR, LEAD, PROCESS_CONTROL), "TravellerActions.markSuspect");
    }

    /** Whoever stands at the chamber may say that an arc ended: what was hot is written down. */
    private static void chamber() {
        Permit hands = Permit.of(FABRICATOR, LEAD);
        put(hands, "SessionActions.*", "LockActions.*", "Joints.startArc");
        put(hands.signedBy(LEAD), "SessionActions.leaveOut", "SessionActions.abandon");
        put(Permit.of(FABRICATOR, INSPECTOR, LEAD), "Joints.stopArc");
        put(Permit.reads(), "Joints.objections", "JointRecordOfTravellers.objections", "ChamberRecord.isWeldToSign",
                "RecordOfTravellers.weldsToSign");
    }

    private static void insideOnly() {
        put(Permit.services(), "BinCommand.PutIn", "BinCommand.TakeOut", "BinCommand.SetApartInside",
                "BinCommand.CloseBin", "BinCommand.OpenBin", "BathCommand.TakeIn", "BathCommand.EnterAnalysis",
                "BathCommand.FindBad", "ArgonCommand.Deliver", "ArgonCommand.Connect", "ArgonCommand.Disconnect",
                "ArgonStore.prepare", "ChamberCommand.ChangeOver", "ChamberCommand.NoteArgonUsed",
                "MeterCommand.TypeReading", "GearOfShop.*", "ChamberRecord.*", "RecordOfTravellers.*",
                "JointRecordOfTravellers.*");
    }

    private static void put(Permit permit, String... deeds) {
        for (String deed : deeds) {
            if (TABLE.put(deed, permit) != null) {
                throw new IllegalStateException("two rows for " + deed);
            }
        }
    }
}
