package brightseam.ui.admin;

import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.procedure.Procedure;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Source;
import brightseam.procedure.Step;
import brightseam.procedure.Vocabulary;
import brightseam.report.Phrases;
import brightseam.words.Words;
import brightseam.words.Wording;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.stream.Collectors;

/** A procedure to read: every step with its limits, and where each value comes from. */
final class ProcedurePage extends Div {

    private final Procedure procedure;
    private final Vocabulary vocabulary;

    ProcedurePage(Procedure procedure, Vocabulary vocabulary) {
        this.procedure = procedure;
        this.vocabulary = vocabulary;
        addClassName("procedure-page");
        add(new Paragraph(procedure.scope()), new Paragraph("Grades: " + String.join(", ", procedure.grades()) + "."),
                new Paragraph(window()), new H3("Steps"), steps(), new H3("Sources"), sources());
    }

    private String window() {
        var window = procedure.window();
        return "Clean window: opened by " + title(window.openedBy().value()) + ", closed by "
                + title(window.closedBy().value()) + "; " + Words.duration(window.limits().open()) + " in the open, "
                + Words.duration(window.limits().closedCleanBin()) + " in a closed clean bin, "
                + Words.duration(window.limits().sealedBag()) + " in a sealed bag; passing in needs "
                + Words.duration(window.passInMargin()) + ". Run out, it goes back to "
                + title(window.renewReturnsTo().value()) + "; touched, to "
                + title(procedure.touchReturnsTo().value()) + ".";
    }

    private OrderedList steps() {
        OrderedList list = new OrderedList();
        list.addClassName("procedure-steps");
        procedure.steps().forEach(step -> list.add(step(step)));
        return list;
    }

    private ListItem step(Step step) {
        DescriptionList facts = new DescriptionList();
        fact(facts, "Where", Wording.words(step.station()) + (step.inSession() ? ", in a chamber session" : ""));
        fact(facts, "Passed by", Wording.words(step.signedBy().name()) + (step.isInspectionPoint() ? "'s stamp" : ""));
        fact(facts, "Cautions", step.cautions().stream().map(key -> vocabulary.cautions().get(key).title())
                .collect(Collectors.joining("; ")));
        fact(facts, "Bins", step.bins().stream().sorted().map(bin -> Wording.words(bin.name()))
                .collect(Collectors.joining(" or ")));
        fact(facts, "Gloves", step.gloves().map(key -> vocabulary.gloves().get(key).name()).orElse(""));
        fact(facts, "Scanned first", step.uses().stream().map(use -> vocabulary.supplyName(use.type())
                + (use.change() ? " (new)" : "")).collect(Collectors.joining("; ")));
        fact(facts, "Needs", String.join("; ", step.needs()));
        fact(facts, "Hold", step.hold().map(Phrases::limits).orElse(""));
        fact(facts, "Gap to the next step", step.gap().map(ProcedurePage::gap).orElse(""));
        fact(facts, "Readings", step.readings().stream().map(this::reading).collect(Collectors.joining("; ")));
        fact(facts, "Rework may return to", step.reworkTo().stream().map(id -> title(id.value()))
                .collect(Collectors.joining(", ")));
        fact(facts, "Sources", step.sources().stream().map(this::source).collect(Collectors.joining("; ")));
        Paragraph title = new Paragraph(step.number() + " " + step.title());
        title.addClassName("procedure-step-title");
        return new ListItem(title, new Paragraph(step.instruction()), facts);
    }

    private static void fact(DescriptionList facts, String term, String words) {
        if (!words.isEmpty()) {
            facts.add(new DescriptionList.Term(term), new DescriptionList.Description(words));
        }
    }

    private static String gap(Gap gap) {
        return "at most " + Words.duration(gap.maximum()) + ": " + gap.reason();
    }

    private String reading(ReadingSpec reading) {
        String when = reading.beforeHold() ? " (before the hold)" : "";
        return reading.label() + (reading.isPassFail() ? ": in order"
                : ": " + Words.limits(reading.limits(), vocabulary.symbol(reading))) + when;
    }

    private String source(String key) {
        return procedure.sources().stream().filter(source -> source.key().equals(key)).map(Source::title).findFirst()
                .orElse(key);
    }

    private UnorderedList sources() {
        UnorderedList list = new UnorderedList();
        procedure.sources().forEach(source -> list.add(new ListItem(source.title()
                + (source.confirmed() ? "" : " (not checked against the source)"))));
        return list;
    }

    private String title(String id) {
        return procedure.steps().stream().filter(step -> step.id().value().equals(id)).map(Step::title).findFirst()
                .orElse(id);
    }
}
