package brightseam.report.shell;

import brightseam.report.GapTaken;
import brightseam.report.HoldTaken;
import brightseam.report.Mark;
import brightseam.report.Pass;
import brightseam.report.Phrases;
import brightseam.report.ReadingLine.Correction;
import brightseam.report.ReadingLine;
import brightseam.report.StepPage;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/** Writes the steps: every pass with its hold, gap, readings, corrections and signature. */
final class StepPaper {

    private static final Map<String, String> READING_HEADS = Sheet.heads("label", "Reading", "value", "Value",
            "limits", "Limits", "scale-cell", "", "", "Read by");

    private final Sheet sheet;
    private final ZoneId zone;
    private final Bars bars;

    StepPaper(Sheet sheet, ZoneId zone) {
        this.sheet = sheet;
        this.zone = zone;
        this.bars = new Bars(sheet);
    }

    void write(List<StepPage> steps) {
        sheet.add(sheet.body(), "h2", "", "Steps");
        steps.forEach(this::step);
    }

    private void step(StepPage page) {
        Element block = sheet.add(sheet.body(), "div", "step");
        Element head = sheet.add(block, "h3", "");
        sheet.add(head, "span", "number", String.valueOf(page.step().number()));
        sheet.write(head, " " + page.step().title());
        sheet.add(head, "span", "kind", " " + Wording.words(page.step().kind().name())
                + (page.step().isInspectionPoint() ? " point" : "") + " · " + Wording.words(page.step().station()));
        if (page.passes().isEmpty()) {
            sheet.add(block, "p", "not-begun", "Not begun.");
        }
        page.passes().forEach(pass -> pass(block, pass, page.passes().size() > 1));
    }

    private void pass(Element block, Pass pass, boolean several) {
        Element shown = sheet.add(block, "div", pass.superseded().isPresent() ? "pass superseded" : "pass");
        if (several || pass.superseded().isPresent()) {
            sheet.add(shown, "p", "pass-number", "Pass " + pass.number() + pass.superseded().map(why ->
                    " – SUPERSEDED " + Phrases.when(why.at(), zone) + " by " + why.by() + ": " + why.reason())
                    .orElse(""));
        }
        sheet.add(shown, "p", "begun", begun(pass));
        pass.late().ifPresent(late -> {
            sheet.add(shown, "p", "late", Phrases.late(late, zone));
            mark(shown, late.mark(), "");
        });
        pass.gap().ifPresent(gap -> gap(shown, gap));
        pass.hold().ifPresent(hold -> hold(shown, hold));
        if (!pass.readings().isEmpty()) {
            Element rows = sheet.table(shown, "readings", READING_HEADS);
            pass.readings().forEach(line -> reading(rows, line));
        }
        pass.mark().ifPresentOrElse(mark -> mark(shown, mark, pass.remark()),
                () -> sheet.add(shown, "p", "unsigned", "Not signed."));
    }

    private String begun(Pass pass) {
        StringBuilder words = new StringBuilder("Begun " + Phrases.when(pass.startedAt(), zone) + " by "
                + pass.startedBy() + " (" + pass.startedBy().badge() + ")");
        pass.station().ifPresent(station -> words.append(", station ").append(station));
        words.append(", tablet ").append(pass.tablet());
        if (!pass.bins().isEmpty()) {
            words.append(", in ").append(pass.bins().stream()
                    .map(stay -> stay.bin() + " (" + Wording.words(stay.binClass().name()) + ")").distinct()
                    .collect(Collectors.joining(", then ")));
        }
        if (!pass.loadWith().isEmpty()) {
            words.append(", in one load with ").append(pass.loadWith().stream().map(Object::toString)
                    .collect(Collectors.joining(", ")));
        }
        pass.gloves().ifPresent(gloves -> words.append(". Gloves on: ").append(gloves));
        if (!pass.contacts().isEmpty()) {
            words.append(". Touched by: ").append(pass.contacts().stream().map(Phrases::contact)
                    .collect(Collectors.joining("; ")));
        }
        if (!pass.cautionsRead().isEmpty()) {
            words.append(". Cautions read: ").append(String.join("; ", pass.cautionsRead()));
        }
        return words.append('.').toString();
    }

    private void gap(Element shown, GapTaken gap) {
        sheet.add(shown, "p", gap.isWithin() ? "gap" : "gap out", "Gap since step " + gap.from() + ": "
                + Words.duration(gap.used()) + " of at most " + Words.duration(gap.limit().maximum())
                + (gap.isWithin() ? "." : ": NOT KEPT."));
    }

    private void hold(Element shown, HoldTaken hold) {
        boolean fine = hold.verdict() == HoldTaken.Verdict.WITHIN;
        Element line = sheet.add(shown, "div", fine ? "hold" : "hold out");
        bars.hold(line, hold);
        String end = hold.endedAt().map(at -> Phrases.when(at, zone) + " by "
                + hold.endedBy().map(Object::toString).orElse("")).orElse("not ended");
        sheet.add(line, "p", "", "Held " + hold.lasted().map(Words::duration).orElse("–") + ", "
                + Phrases.verdict(hold.verdict()) + " (" + Phrases.limits(hold.limits()) + "). From "
                + Phrases.when(hold.begunAt(), zone) + " by " + hold.begunBy() + " to " + end + ".");
    }

    private void reading(Element rows, ReadingLine line) {
        Element row = sheet.add(rows, "tr", line.repeated() ? "repeated" : "");
        sheet.add(row, "td", "label", line.spec().label() + (line.repeated() ? " (read again below)" : ""));
        Element value = sheet.add(row, "td", "value");
        String first = Phrases.value(line.spec(), line.symbol(), line.value());
        if (line.corrections().isEmpty()) {
            sheet.add(value, "span", line.inLimits() ? "" : "out", first + (line.inLimits() ? "" : " – OUT"));
        } else {
            sheet.add(value, "s", "", first);
        }
        for (int i = 0; i < line.corrections().size(); i++) {
            corrected(value, line, i);
        }
        sheet.add(row, "td", "limits", Phrases.limits(line.spec(), line.symbol()));
        Element scale = sheet.add(row, "td", "scale-cell");
        if (!line.spec().isPassFail()) {
            bars.reading(scale, line.spec().limits(), line.current());
        }
        Element by = sheet.add(row, "td", "", line.by() + ", ");
        sheet.add(by, "span", "moment", Phrases.when(line.at(), zone));
        line.corrections().forEach(correction -> why(rows, correction));
    }

    private void corrected(Element value, ReadingLine line, int i) {
        Correction correction = line.corrections().get(i);
        String to = Phrases.value(line.spec(), line.symbol(), correction.to());
        sheet.write(value, " ");
        if (i < line.corrections().size() - 1) {
            sheet.add(value, "s", "", to);
        } else {
            sheet.add(value, "span", correction.inLimits() ? "" : "out", to + (correction.inLimits() ? "" : " – OUT"));
        }
    }

    private void why(Element rows, Correction correction) {
        Element cell = sheet.add(sheet.add(rows, "tr", "why"), "td", "");
        cell.setAttribute("colspan", "5");
        sheet.write(cell, "Corrected " + Phrases.when(correction.mark().at(), zone) + " by " + correction.mark().name()
                + " (" + correction.mark().badge() + "): " + correction.reason());
    }

    private void mark(Element shown, Mark mark, String remark) {
        Element box = sheet.add(shown, "div", "mark");
        MarkWords words = new MarkWords(mark, zone);
        sheet.add(box, "span", "mark-name", words.name());
        sheet.write(box, " " + words.rest() + (remark.isBlank() ? "" : " Remark: " + remark));
    }
}
