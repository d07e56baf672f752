package brightseam.report.shell;

import brightseam.report.ChamberPart;
import brightseam.report.JointTaken;
import brightseam.report.JointWords;
import brightseam.report.Phrases;
import brightseam.words.Wording;
import java.time.ZoneId;
import java.util.List;
import org.w3c.dom.Element;

/** Writes what happened in the chamber: how the lot came in, the lock, argon and meters, every joint with its chart. */
final class ChamberPaper {

    private final Sheet sheet;
    private final ZoneId zone;

    ChamberPaper(Sheet sheet, ZoneId zone) {
        this.sheet = sheet;
        this.zone = zone;
    }

    /** A lot that was never in a session has no such part. */
    void write(ChamberPart part) {
        if (part.isEmpty()) {
            return;
        }
        sheet.add(sheet.body(), "h2", "", "In the chamber");
        part.entries().forEach(entry -> sheet.add(sheet.body(), "p", "said", "Session " + entry.session()
                + ": passed in " + Phrases.when(entry.at(), zone) + " at " + entry.station() + ", " + entry.way()
                + ", by " + entry.by() + "."));
        part.locks().forEach(pass -> sheet.add(sheet.body(), "p", "", JointWords.pass(pass, zone)));
        gear(part);
        part.joints().forEach(this::joint);
        part.pending().forEach(pending -> sheet.add(sheet.body(), "p", "unsigned", "Joint " + pending.arc().joint()
                + ", run " + pending.arc().run() + ": the arc began " + Phrases.when(pending.since(), zone)
                + "; no evidence is in yet."));
    }

    private void gear(ChamberPart part) {
        if (part.gear().isEmpty()) {
            return;
        }
        Element rows = sheet.table(sheet.body(), "list list-two", Sheet.heads("", "Kind", "", "What", "", "Label", "",
                "Lot or serial number", "", "Calibration or last day"));
        part.gear().forEach(gear -> sheet.row(rows, List.of(Wording.words(gear.contact().kind().name()),
                Wording.words(gear.contact().type()), gear.contact().label(), gear.contact().lot(),
                JointWords.lastDay(gear))));
    }

    private void joint(JointTaken joint) {
        Element block = sheet.add(sheet.body(), "div", "joint");
        sheet.add(block, "h3", "", JointWords.heading(joint));
        sheet.add(block, "p", "", JointWords.made(joint, zone));
        JointWords.evidence(joint).forEach(words ->
                sheet.add(block, "p", joint.isInOrder() ? "said" : "said out", words));
        sheet.chart(block, joint.chart(zone));
        if (joint.verdicts().isEmpty()) {
            sheet.add(block, "p", "unsigned", "Not judged.");
        }
        joint.verdicts().forEach(judged -> {
            sheet.add(block, "p", judged.verdict().accepted() ? "said" : "said out",
                    JointWords.verdict(judged.verdict()));
            MarkWords words = new MarkWords(judged.mark(), zone);
            Element box = sheet.add(block, "div", "mark");
            sheet.add(box, "span", "mark-name", words.name());
            sheet.write(box, " " + words.rest());
        });
    }
}
