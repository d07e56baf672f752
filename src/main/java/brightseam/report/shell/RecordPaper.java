package brightseam.report.shell;

import brightseam.kernel.Moment;
import brightseam.report.Approval;
import brightseam.report.HeatDetails;
import brightseam.report.Phrases;
import brightseam.report.RecordMark;
import brightseam.report.SealedWith;
import brightseam.report.TravellerDocument;
import brightseam.report.TravellerDocument.FollowedProcedure;
import brightseam.report.TravellerDocument.Identity;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.w3c.dom.Element;

/** Lays a document out on A4. */
final class RecordPaper {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private final TravellerDocument told;
    private final ZoneId zone;
    private final String safetyNotice;
    private final Optional<SealedWith> evidence;
    private final Sheet sheet;

    RecordPaper(TravellerDocument told, ZoneId zone, String safetyNotice) {
        this(told, zone, safetyNotice, Optional.empty());
    }

    RecordPaper(TravellerDocument told, ZoneId zone, String safetyNotice, Optional<SealedWith> evidence) {
        this.told = told;
        this.zone = zone;
        this.safetyNotice = safetyNotice;
        this.evidence = evidence;
        this.sheet = new Sheet("Record of traveller " + told.identity().id());
    }

    byte[] print(Moment now, String printedBy) {
        return PdfPrinter.print(layOut(now, printedBy).document(), sheet.charts());
    }

    /** The whole document; running parts come first, so that the first page has them too. */
    Sheet layOut(Moment now, String printedBy) {
        Element body = sheet.body();
        running(body, now, printedBy);
        head(body);
        identity(body);
        new StepPaper(sheet, zone).write(told.steps());
        new ChamberPaper(sheet, zone).write(told.chamber());
        new TroublePaper(sheet, zone).write(told);
        new ProofPaper(sheet).write(told, mark(), evidence);
        sheet.add(body, "p", "notice", safetyNotice);
        return sheet;
    }

    private void running(Element body, Moment now, String printedBy) {
        if (told.demo()) {
            sheet.add(body, "div", "demo-across", "DEMO");
        }
        Element top = sheet.add(body, "div", "running-head");
        sheet.add(top, "span", "running-label", "Traveller " + told.identity().id());
        sheet.write(top, " · " + told.identity().part().partNumber() + " rev "
                + told.identity().part().drawingRevision() + (told.demo() ? " · DEMO, recorded in a demo shop" : ""));
        Element foot = sheet.add(body, "div", "running-foot");
        sheet.add(foot, "div", "hash", "Entries " + told.chain().entries() + " · SHA-256 " + told.chain().lastHash());
        sheet.add(foot, "div", "", "Printed " + Phrases.when(now, zone) + " by " + printedBy);
    }

    private void head(Element body) {
        Identity identity = told.identity();
        Element table = sheet.add(body, "table", "title");
        Element row = sheet.add(table, "tr", "");
        Element words = sheet.add(row, "td", "");
        sheet.add(words, "p", "kind", "Record of traveller");
        sheet.add(words, "h1", "", identity.id().value());
        sheet.add(words, "p", "what", identity.part().description() + ", " + Phrases.pieces(identity.pieces()));
        sheet.add(words, "p", "phase", "Now: " + Phrases.phase(identity.phase())
                + (identity.quarantined() ? ", in quarantine" : "") + (told.isSuspect() ? ", SUSPECT" : ""));
        Element symbol = sheet.add(sheet.add(row, "td", "symbol"), "object", "data-matrix");
        symbol.setAttribute("type", DataMatrixDrawer.TYPE);
        symbol.setAttribute(DataMatrixDrawer.PAYLOAD, mark().payload());
    }

    private RecordMark mark() {
        return evidence.map(with -> told.recordMark().sealedAt(with.head())).orElseGet(told::recordMark);
    }

    private void identity(Element body) {
        Element table = sheet.add(body, "table", "facts");
        Identity identity = told.identity();
        sheet.fact(table, "Part", identity.part().partNumber() + ", drawing revision "
                + identity.part().drawingRevision());
        sheet.fact(table, "Lot", identity.released().size() + (identity.released().size() == 1 ? " piece" : " pieces")
                + " at first (" + Phrases.pieces(identity.released()) + "), now " + identity.pieces().size() + " ("
                + Phrases.pieces(identity.pieces()) + ")");
        sheet.fact(table, "Kit", identity.kit().value());
        identity.parent().ifPresent(parent -> sheet.fact(table, "Set apart from", parent.value()));
        sheet.fact(table, "Released", Phrases.when(identity.releasedAt(), zone) + " by "
                + Phrases.releasedBy(identity));
        told.heat().ifPresentOrElse(heat -> heat(table, heat), () -> sheet.fact(table, "Heat",
                identity.heat() + ": not registered in this shop"));
        procedure(table, told.procedure());
        sheet.fact(table, "Times", "wall clock of the zone " + zone.getId() + "; holds and gaps are measured on the"
                + " shop's own elapsed time, which a stepped wall clock does not change");
    }

    private void heat(Element table, HeatDetails heat) {
        sheet.fact(table, "Heat", heat.label() + ": grade " + heat.grade() + " " + heat.form() + ", "
                + heat.dimensions());
        sheet.fact(table, "Certificate", heat.certificateNumber() + " of " + heat.maker() + ", received "
                + DAY.format(heat.receivedAt().atZone(zone))
                + heat.holdReason().map(reason -> ". On hold now: " + reason).orElse(""));
    }

    private void procedure(Element table, FollowedProcedure procedure) {
        sheet.fact(table, "Procedure", procedure.ref().label() + ": " + procedure.title());
        sheet.fact(table, "Approved", procedure.approval().map(this::approved).orElse("no approval is recorded"));
        sheet.fact(table, "Its SHA-256", procedure.ref().sha256());
    }

    private String approved(Approval approval) {
        return Phrases.when(approval.at(), zone) + " by " + approval.by() + " (" + approval.by().badge() + ")";
    }
}
