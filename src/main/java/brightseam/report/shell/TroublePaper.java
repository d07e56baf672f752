package brightseam.report.shell;

import brightseam.report.Finding;
import brightseam.report.Incident;
import brightseam.report.IncidentWords;
import brightseam.report.Phrases;
import brightseam.report.RefusedAttempt;
import brightseam.report.TravellerDocument;
import brightseam.report.WindowSpan;
import brightseam.report.WindowWords;
import brightseam.words.Explanation;
import brightseam.words.Words;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/** Writes nonconformances, what befell the lot, the clean window and what was refused. */
final class TroublePaper {

    private final Sheet sheet;
    private final ZoneId zone;

    TroublePaper(Sheet sheet, ZoneId zone) {
        this.sheet = sheet;
        this.zone = zone;
    }

    void write(TravellerDocument told) {
        findings(told.findings());
        incidents(told.incidents());
        window(told.window());
        refused(told.refused());
    }

    private void findings(List<Finding> findings) {
        heading("Nonconformances and dispositions", findings.isEmpty(), "No nonconformance was opened.");
        findings.forEach(finding -> {
            Element block = sheet.add(sheet.body(), "div", "finding");
            sheet.add(block, "h3", "", "Nonconformance " + finding.number() + ": " + Phrases.cause(finding.cause()));
            sheet.add(block, "p", "", "Step " + finding.step() + ", pass " + finding.pass() + ", "
                    + Phrases.pieces(finding.pieces()) + ". Opened " + Phrases.when(finding.at(), zone) + " by "
                    + finding.by() + ".");
            sheet.add(block, "p", "said", finding.text());
            finding.rejection().ifPresent(mark -> mark(block, new MarkWords(mark, zone)));
            finding.decision().ifPresentOrElse(decided -> {
                sheet.add(block, "p", "said", "Disposition: " + Phrases.disposition(decided.disposition())
                        + decided.returnedTo().map(step -> ", back to step " + step).orElse("") + ". Reason: "
                        + decided.reason());
                mark(block, new MarkWords(decided.mark(), zone));
            }, () -> sheet.add(block, "p", "unsigned", "Open: no disposition yet."));
        });
    }

    private void incidents(List<Incident> incidents) {
        heading("Rework, touches, pieces set apart", incidents.isEmpty(), "Nothing of the kind was recorded.");
        if (!incidents.isEmpty()) {
            Element rows = sheet.table(sheet.body(), "list", Sheet.heads("time", "When", "", "What", "by", "By"));
            incidents.forEach(incident -> sheet.row(rows, List.of(Phrases.when(incident.at(), zone),
                    IncidentWords.of(incident), incident.by().toString())));
        }
    }

    private void window(List<WindowSpan> spans) {
        heading("Clean window", spans.isEmpty(), "It was not opened.");
        if (!spans.isEmpty()) {
            Element rows = sheet.table(sheet.body(), "list list-two", Sheet.heads(
                    "time", "From", "time", "To", "", "Kept", "", "For", "", "Then"));
            spans.forEach(span -> sheet.row(rows, List.of(Phrases.when(span.from(), zone),
                    span.to().map(to -> Phrases.when(to, zone)).orElse("still open"), WindowWords.kept(span),
                    span.to().map(to -> Words.duration(to.since(span.from()))).orElse(""),
                    WindowWords.then(span))));
        }
    }

    private void refused(List<RefusedAttempt> refused) {
        heading("Refused attempts", refused.isEmpty(), "Nothing was refused.");
        if (!refused.isEmpty()) {
            Element rows = sheet.table(sheet.body(), "list", Sheet.heads(
                    "time", "When", "tried", "Tried", "", "Refused because", "by", "By"));
            refused.forEach(attempt -> sheet.row(rows, List.of(Phrases.when(attempt.at(), zone), attempt.attempt(),
                    attempt.reasons().stream().map(Explanation::reason).collect(Collectors.joining(" ")),
                    attempt.by() + ", " + attempt.tablet())));
        }
    }

    private void heading(String words, boolean empty, String nothing) {
        sheet.add(sheet.body(), "h2", "", words);
        if (empty) {
            sheet.add(sheet.body(), "p", "nothing", nothing);
        }
    }

    private void mark(Element block, MarkWords words) {
        Element box = sheet.add(block, "div", "mark");
        sheet.add(box, "span", "mark-name", words.name());
        sheet.write(box, " " + words.rest());
    }
}
