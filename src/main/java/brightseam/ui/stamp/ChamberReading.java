package brightseam.ui.stamp;

import brightseam.report.ChamberPart;
import brightseam.report.Gear;
import brightseam.report.JointTaken;
import brightseam.report.JointWords;
import brightseam.report.Phrases;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.parts.Chart;
import brightseam.ui.parts.Drawn;
import brightseam.words.Wording;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import java.time.ZoneId;

/** What happened in the chamber, as the print has it. */
final class ChamberReading extends Div {

    ChamberReading(ChamberPart part, ZoneId zone) {
        if (part.isEmpty()) {
            add(Forms.note("It was in no chamber session."));
            return;
        }
        part.entries().forEach(entry -> add(new Paragraph("Session " + entry.session() + ": passed in "
                + Phrases.when(entry.at(), zone) + " at " + entry.station() + ", " + entry.way() + ", by "
                + entry.by() + ".")));
        part.locks().forEach(pass -> add(new Paragraph(JointWords.pass(pass, zone))));
        if (!part.gear().isEmpty()) {
            add(new DeskTable<Gear>("What touched the joints or measured there", "")
                    .text("Kind", gear -> Wording.words(gear.contact().kind().name()))
                    .text("What", gear -> Wording.words(gear.contact().type()) + " " + gear.contact().label())
                    .text("Lot or serial number", gear -> gear.contact().lot())
                    .text("Calibration or last day", JointWords::lastDay).show(part.gear()));
        }
        part.joints().forEach(joint -> add(joint(joint, zone)));
        part.pending().forEach(pending -> add(new Paragraph("Joint " + pending.arc().joint() + ", run "
                + pending.arc().run() + ": the arc began " + Phrases.when(pending.since(), zone)
                + "; no evidence is in yet.")));
    }

    private static Div joint(JointTaken joint, ZoneId zone) {
        Div shown = new Div(new H3(JointWords.heading(joint)), new Paragraph(JointWords.made(joint, zone)));
        JointWords.evidence(joint).forEach(words -> {
            Paragraph evidence = new Paragraph(words);
            evidence.setClassName("record-out", !joint.isInOrder());
            shown.add(evidence);
        });
        shown.add(new Chart(Drawn.of(joint.chart(zone))));
        shown.addClassName("record-finding");
        if (joint.verdicts().isEmpty()) {
            shown.add(new Paragraph("Not judged."));
        }
        joint.verdicts().forEach(judged -> shown.add(new Paragraph(JointWords.verdict(judged.verdict())),
                RecordBody.mark(judged.mark(), zone)));
        return shown;
    }
}
