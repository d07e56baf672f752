package brightseam.ui.stamp;

import brightseam.report.GapTaken;
import brightseam.report.HoldTaken;
import brightseam.report.Pass;
import brightseam.report.Phrases;
import brightseam.report.ReadingLine;
import brightseam.report.StepPage;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Chart;
import brightseam.ui.parts.HoldBar;
import brightseam.ui.parts.ReadingScale;
import brightseam.ui.trace.TraceAddress;
import brightseam.words.Wording;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlComponent;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.time.ZoneId;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One step to read: every pass with holds and readings against their limits, corrections in place. */
final class StepReading extends Section {

    private final ZoneId zone;

    StepReading(StepPage page, ZoneId zone) {
        this.zone = zone;
        addClassName("record-step");
        add(new H3(page.label() + (page.step().isInspectionPoint() ? " (inspection point)" : "")));
        page.passes().forEach(pass -> add(pass.superseded()
                .<Component>map(why -> superseded(pass, why)).orElseGet(() -> pass(pass))));
    }

    private Component superseded(Pass pass, Pass.Superseded why) {
        NativeDetails folded = new NativeDetails("Pass " + pass.number() + ", superseded "
                + Phrases.when(why.at(), zone) + " by " + why.by() + ": " + why.reason(), pass(pass));
        folded.setOpen(true);
        folded.addClassName("record-superseded");
        return folded;
    }

    private Div pass(Pass pass) {
        Div shown = new Div(new Paragraph(begun(pass)), traces(pass));
        shown.addClassName("record-pass");
        pass.late().ifPresent(late -> {
            Paragraph words = new Paragraph(Phrases.late(late, zone));
            words.addClassName("record-late");
            shown.add(words, RecordBody.mark(late.mark(), zone));
        });
        pass.gap().ifPresent(gap -> shown.add(gap(gap)));
        pass.hold().ifPresent(hold -> shown.add(hold(hold)));
        pass.readings().forEach(line -> shown.add(reading(line)));
        pass.mark().ifPresentOrElse(mark -> shown.add(RecordBody.mark(mark, zone)),
                () -> shown.add(new Paragraph("Not signed.")));
        if (!pass.remark().isBlank()) {
            shown.add(new Paragraph("Remark: " + pass.remark()));
        }
        return shown;
    }

    private String begun(Pass pass) {
        String where = pass.station().map(station -> " at station " + station).orElse("");
        String bins = pass.bins().isEmpty() ? "" : ", in " + pass.bins().stream()
                .map(stay -> stay.bin() + " (" + Wording.words(stay.binClass().name()) + ")").distinct()
                .collect(Collectors.joining(", then "));
        String load = pass.loadWith().isEmpty() ? "" : ", in one load with "
                + pass.loadWith().stream().map(Object::toString).collect(Collectors.joining(", "));
        return "Begun " + Phrases.when(pass.startedAt(), zone) + " by " + pass.startedBy() + where + bins + load + "."
                + pass.gloves().map(gloves -> " Gloves on: " + gloves + ".").orElse("")
                + (pass.contacts().isEmpty() ? "" : " Touched by: "
                        + pass.contacts().stream().map(Phrases::contact).collect(Collectors.joining("; ")) + ".")
                + (pass.cautionsRead().isEmpty() ? ""
                        : " Cautions read: " + String.join("; ", pass.cautionsRead()) + ".");
    }

    /** From each label to what else it touched. */
    private static Component traces(Pass pass) {
        Paragraph ways = new Paragraph(new Span("Trace: "));
        Stream.of(pass.bins().stream().map(stay -> Thing.of(ThingKind.BIN, stay.bin())),
                        pass.station().stream().map(station -> Thing.of(ThingKind.STATION, station)),
                        pass.contacts().stream().map(Thing::of),
                        Stream.of(Thing.of(ThingKind.PERSON, pass.startedBy().badge())))
                .flatMap(things -> things).distinct()
                .forEach(thing -> ways.add(Links.to(TraceAddress.of(thing), thing.label()), new Span(" ")));
        ways.addClassName("record-traces");
        return ways;
    }

    private static Component gap(GapTaken gap) {
        Paragraph words = new Paragraph("Gap since step " + gap.from() + ": " + Words.duration(gap.used())
                + " of at most " + Words.duration(gap.limit().maximum()) + (gap.isWithin() ? "." : ": NOT KEPT."));
        words.setClassName("record-out", !gap.isWithin());
        return words;
    }

    private static Component hold(HoldTaken hold) {
        return hold.lasted().<Component>map(lasted -> new Chart(new HoldBar("Hold", hold.limits(), lasted)))
                .orElseGet(() -> new Paragraph("The hold was begun and not ended."));
    }

    private Component reading(ReadingLine line) {
        Div shown = new Div();
        shown.addClassName("record-reading");
        if (line.spec().isPassFail()) {
            shown.add(new Paragraph(line.spec().label() + ": " + Phrases.value(line.spec(), "", line.current())));
        } else {
            shown.add(new Chart(new ReadingScale(line.spec().label(), line.symbol(), line.spec().limits(),
                    line.current())));
        }
        Paragraph said = new Paragraph("Read by " + line.by() + ", " + Phrases.when(line.at(), zone) + "."
                + (line.repeated() ? " Read again below." : ""));
        shown.add(said);
        line.corrections().forEach(correction -> {
            HtmlComponent old = new HtmlComponent("s");
            old.getElement().setText(Phrases.value(line.spec(), line.symbol(), correction.from()));
            Paragraph corrected = new Paragraph(new Span("Corrected from "), old, new Span(" to "
                    + Phrases.value(line.spec(), line.symbol(), correction.to()) + " by " + correction.mark().name()
                    + ", " + Phrases.when(correction.mark().at(), zone) + ": " + correction.reason()));
            shown.add(corrected);
        });
        shown.setClassName("record-out", !line.currentInLimits());
        return shown;
    }
}
