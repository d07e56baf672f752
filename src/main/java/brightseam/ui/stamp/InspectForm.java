package brightseam.ui.stamp;

import brightseam.kernel.TravellerId;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.procedure.Vocabulary;
import brightseam.report.Phrases;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.TravellerActions;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Forms;
import brightseam.ui.parts.CautionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** What an inspector does before the stamp: begin, hold, read. */
final class InspectForm extends Div {

    private final Decisions decisions;
    private final TravellerActions actions;
    private final Vocabulary vocabulary;
    private final List<TravellerId> self;

    InspectForm(Decisions decisions, TravellerActions actions, Vocabulary vocabulary, NextAction next) {
        this.decisions = decisions;
        this.actions = actions;
        this.vocabulary = vocabulary;
        this.self = List.of(decisions.id());
        addClassName("stamp-form");
        switch (next) {
            case NextAction.Begin begin -> begin(begin.step());
            case NextAction.BeginHold hold -> beginHold(hold.step());
            case NextAction.Holding hold -> endHold(hold.step());
            case NextAction.Read read -> read(read.step(), read.reading());
            case NextAction.PutInto other -> atTheBench();
            case NextAction.CloseBin other -> atTheBench();
            case NextAction.Sign other -> atTheBench();
            case NextAction.AwaitStamp other -> setVisible(false);
            case NextAction.AwaitSession other -> setVisible(false);
            case NextAction.AwaitDisposition other -> setVisible(false);
            case NextAction.Ended other -> setVisible(false);
        }
    }

    private void begin(Step step) {
        add(new H3("Begin the inspection"), new Paragraph(step.instruction()));
        List<String> cautions = step.cautions().stream().map(key -> Optional.ofNullable(vocabulary.cautions().get(key))
                .map(caution -> caution.title() + ": " + caution.harm()).orElse(key)).toList();
        add(new CautionList(cautions));
        step.gloves().ifPresent(key -> add(new Paragraph("Gloves: " + Optional.ofNullable(vocabulary.gloves().get(key))
                .map(Vocabulary.Glove::name).orElse(key) + ".")));
        String words = cautions.isEmpty() && step.gloves().isEmpty() ? "Begin"
                : "I have read this and wear what it asks: begin";
        add(Forms.act(words, () -> decisions.plain("Begun", "Step " + step.number() + " " + step.title() + " is begun.",
                () -> actions.startStep(decisions.desk().actor(), self, step.id(), Optional.empty(), true, true,
                        List.of()))));
    }

    private void beginHold(Step step) {
        add(new H3("Begin the hold"), Forms.act("Begin the hold", () -> decisions.plain("Begun", "The hold runs.",
                () -> actions.beginHold(decisions.desk().actor(), self, step.id()))));
    }

    private void endHold(Step step) {
        add(new H3("The hold runs"), Forms.act("End the hold", () -> decisions.plain("Ended", "The hold has ended.",
                () -> actions.endHold(decisions.desk().actor(), self, step.id()))));
    }

    private void read(Step step, ReadingSpec spec) {
        String symbol = vocabulary.symbol(spec);
        add(new H3("Read: " + spec.label()));
        if (spec.isPassFail()) {
            add(Forms.row(Forms.act("In order", () -> take(step, spec, BigDecimal.ONE)),
                    Forms.button("Not in order", () -> take(step, spec, BigDecimal.ZERO))));
            return;
        }
        TextField value = Forms.text(spec.label() + " in " + symbol, "Limits: " + Phrases.limits(spec, symbol));
        add(Forms.row(value, Forms.act("Write down", () -> decisions.told()
                .guarded(() -> Optional.of(Ask.number(value.getValue())))
                .ifPresent(number -> take(step, spec, number)))));
    }

    private void take(Step step, ReadingSpec spec, BigDecimal value) {
        decisions.plain("Written down", spec.label() + " is in the record.", () ->
                actions.takeReading(decisions.desk().actor(), self, step.id(), spec.id(), value));
    }

    private void atTheBench() {
        add(new Paragraph("Something is left to do at the bench first."));
    }
}
