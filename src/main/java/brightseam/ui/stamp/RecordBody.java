package brightseam.ui.stamp;

import brightseam.report.Finding;
import brightseam.report.HeatDetails;
import brightseam.report.IncidentWords;
import brightseam.report.Mark;
import brightseam.report.Phrases;
import brightseam.report.RefusedAttempt;
import brightseam.report.StepPage;
import brightseam.report.TravellerDocument;
import brightseam.report.WindowSpan;
import brightseam.report.WindowWords;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.words.Explanation;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;

/** The record as a page to read, in order. */
final class RecordBody extends Div {

    private final ZoneId zone;

    RecordBody(TravellerDocument told, ZoneId zone) {
        this.zone = zone;
        addClassName("record");
        add(Forms.panel("Identity", identity(told)), Forms.panel("Steps in order", steps(told.steps())),
                Forms.panel("In the chamber", new ChamberReading(told.chamber(), zone)),
                Forms.panel("Nonconformances and dispositions", findings(told.findings())),
                Forms.panel("Rework, touches, pieces set apart", incidents(told)),
                Forms.panel("Clean window", window(told.window())),
                Forms.panel("Refused attempts", refused(told.refused())),
                Forms.panel("Authority and chain", authority(told), chain(told)));
    }

    private Component identity(TravellerDocument told) {
        DescriptionList facts = new DescriptionList();
        facts.addClassName("record-facts");
        TravellerDocument.Identity identity = told.identity();
        fact(facts, "Part", identity.part().partNumber() + " rev " + identity.part().drawingRevision() + ", "
                + identity.part().description());
        fact(facts, "Lot", Phrases.pieces(identity.pieces()) + " (at first " + Phrases.pieces(identity.released())
                + ")" + identity.parent().map(parent -> ", set apart from " + parent).orElse(""));
        fact(facts, "Kit", identity.kit().value());
        fact(facts, "Heat", told.heat().map(RecordBody::heat).orElse(identity.heat() + ": not registered"));
        fact(facts, "Procedure", told.procedure().ref().label() + ", approved " + told.procedure().approval()
                .map(approval -> Phrases.when(approval.at(), zone) + " by " + approval.by()).orElse("by nobody")
                + ", SHA-256 " + told.procedure().ref().sha256().substring(0, 12) + "…");
        fact(facts, "Released", Phrases.when(identity.releasedAt(), zone) + " by " + Phrases.releasedBy(identity));
        return facts;
    }

    private static String heat(HeatDetails heat) {
        return heat.label() + ", grade " + heat.grade() + " " + heat.form() + " " + heat.dimensions() + ", certificate "
                + heat.certificateNumber() + " of " + heat.maker()
                + heat.holdReason().map(reason -> ". ON HOLD NOW: " + reason).orElse("");
    }

    private Component steps(List<StepPage> pages) {
        Div all = new Div();
        pages.stream().filter(page -> !page.passes().isEmpty()).forEach(page -> all.add(new StepReading(page, zone)));
        List<String> waiting = pages.stream().filter(page -> page.passes().isEmpty()).map(StepPage::label).toList();
        if (!waiting.isEmpty()) {
            all.add(Forms.note("Not begun: " + String.join(", ", waiting) + "."));
        }
        return all;
    }

    private Component findings(List<Finding> findings) {
        Div all = new Div();
        if (findings.isEmpty()) {
            all.add(Forms.note("None. What breaks a limit opens one by itself."));
        }
        findings.forEach(finding -> {
            Div shown = new Div(new H3("Nonconformance " + finding.number() + ": " + Phrases.cause(finding.cause())),
                    new Paragraph("Step " + finding.step() + ", pass " + finding.pass() + ", "
                            + Phrases.pieces(finding.pieces()) + ". Opened " + Phrases.when(finding.at(), zone) + " by "
                            + finding.by() + ". " + finding.text()));
            shown.addClassName("record-finding");
            finding.rejection().ifPresent(mark -> shown.add(mark(mark, zone)));
            finding.decision().ifPresentOrElse(decided -> shown.add(
                    new Paragraph("Disposition: " + Phrases.disposition(decided.disposition())
                            + decided.returnedTo().map(step -> ", back to step " + step).orElse("") + ". Reason: "
                            + decided.reason()), mark(decided.mark(), zone)),
                    () -> shown.add(new Paragraph("Open: no disposition yet.")));
            all.add(shown);
        });
        return all;
    }

    private Component incidents(TravellerDocument told) {
        return new DeskTable<brightseam.report.Incident>("What befell the lot", "Nothing of the kind was recorded.")
                .text("When", incident -> Phrases.when(incident.at(), zone))
                .text("What", IncidentWords::of).text("By", incident -> incident.by().name())
                .show(told.incidents());
    }

    private Component window(List<WindowSpan> spans) {
        return new DeskTable<WindowSpan>("How the pieces were kept", "It was not opened.")
                .text("From", span -> Phrases.when(span.from(), zone))
                .text("To", span -> span.to().map(to -> Phrases.when(to, zone)).orElse("still open"))
                .text("Kept", WindowWords::kept)
                .text("For", span -> span.to().map(to -> Words.duration(to.since(span.from()))).orElse(""))
                .text("Then", WindowWords::then).show(spans);
    }

    private Component refused(List<RefusedAttempt> attempts) {
        if (attempts.isEmpty()) {
            return Forms.note("Nothing was refused.");
        }
        return new NativeDetails(attempts.size() + " refused; show what was tried",
                new DeskTable<RefusedAttempt>("Refused attempts", "")
                        .text("When", attempt -> Phrases.when(attempt.at(), zone))
                        .text("Tried", RefusedAttempt::attempt)
                        .text("Refused because", attempt -> attempt.reasons().stream().map(Explanation::reason)
                                .collect(Collectors.joining(" ")))
                        .text("By", attempt -> attempt.by().name() + ", " + attempt.tablet()).show(attempts));
    }

    private static Component authority(TravellerDocument told) {
        return new DeskTable<brightseam.report.Authority>("Who signed, on what authority", "Nobody has signed yet.")
                .text("Name", person -> person.name() + " (" + person.badge() + ")")
                .text("Roles when signing", person -> Phrases.roles(person.roles()))
                .text("Stamp", person -> person.stamp().orElse("–"))
                .text("Meaning", person -> person.meanings().stream().map(Phrases::meaning)
                        .collect(Collectors.joining(", "))).show(told.authority());
    }

    private static Component chain(TravellerDocument told) {
        Paragraph hash = new Paragraph(told.chain().entries() + " entries, last hash " + told.chain().lastHash() + ". "
                + told.chain().flaw().map(flaw -> "CHAIN BROKEN: " + flaw + ". Do not stamp; call whoever looks after"
                        + " the server.").orElse("Every hash was derived anew for this page, and all fit."));
        hash.addClassName("record-hash");
        return hash;
    }

    /** A signature in a box, as on paper. */
    static Component mark(Mark mark, ZoneId zone) {
        String authority = mark.actedAs().isEmpty() ? "" : " as " + Phrases.roles(mark.actedAs());
        Paragraph shown = new Paragraph(mark.name() + mark.stamp().map(stamp -> " · stamp " + stamp).orElse("") + " – "
                + Phrases.meaning(mark.meaning()) + authority + ", " + Phrases.when(mark.at(), zone) + ", covers "
                + mark.covers() + "; " + Phrases.factors(mark.factors()) + "."
                + mark.contentMark().map(words -> " Signed content " + words + " …").orElse(""));
        shown.addClassName("record-mark");
        return shown;
    }

    private static void fact(DescriptionList facts, String name, String value) {
        facts.add(new DescriptionList.Term(name), new DescriptionList.Description(value));
    }
}
