package brightseam.ui.trace;

import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.people.Person;
import brightseam.people.Signer;
import brightseam.procedure.Step;
import brightseam.report.Phrases;
import brightseam.traveller.Disposition;
import brightseam.traveller.shell.InspectorActions;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import brightseam.words.Words;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Decides what becomes of many that are suspect for one reason: one choice, one reason, one signature. */
final class LiftForm extends Div {

    private final Desk desk;
    private final Told told;
    private final InspectorActions actions;
    private final Consumer<String> done;
    private final CheckboxGroup<Suspects.One> chosen = new CheckboxGroup<>("Which of them");
    private final RadioButtonGroup<Disposition> disposition = new RadioButtonGroup<>("What becomes of those ticked");
    private final Select<StepId> returnTo = new Select<>();
    private final TextArea reason = new TextArea("Reason (goes into every record)");
    private final PasswordField pin = Forms.pin("Your PIN");

    LiftForm(Desk desk, Told told, InspectorActions actions, Suspects suspects, Consumer<String> done) {
        this.desk = desk;
        this.told = told;
        this.actions = actions;
        this.done = done;
        addClassNames("desk-form", "trace-lift");
        List<Disposition> mine = Disposition.openTo(desk.person().map(Person::roles).orElse(List.of()));
        if (mine.isEmpty()) {
            add(Forms.note("A lead or an inspector decides what becomes of them."));
            return;
        }
        chosen.setItems(suspects.all());
        chosen.setItemLabelGenerator(LiftForm::words);
        chosen.setItemEnabledProvider(one -> !one.isHolding());
        chosen.setValue(suspects.all().stream().filter(one -> !one.isHolding()).collect(Collectors.toSet()));
        disposition.setItems(mine);
        disposition.setItemLabelGenerator(Phrases::disposition);
        returnTo.setLabel("Rework goes back to step");
        returnTo.setVisible(false);
        returnTo.setItemLabelGenerator(step -> title(suspects, step));
        chosen.addValueChangeListener(changed -> offerReturns());
        disposition.addValueChangeListener(changed ->
                returnTo.setVisible(changed.getValue() == Disposition.REWORK));
        reason.setMaxLength(Decisions.WORDS_MAX);
        offerReturns();
        add(chosen, disposition, returnTo, reason, Forms.row(pin,
                Forms.act("Decide and sign for all that are ticked", this::decide)));
    }

    private static String words(Suspects.One one) {
        return one.id() + ", " + Phrases.pieces(one.open().pieces()) + ", "
                + Phrases.phase(one.card().traveller().phase())
                + (one.isHolding() ? ": a hold runs, decide when it has ended" : "");
    }

    private static String title(Suspects suspects, StepId id) {
        return suspects.all().stream().flatMap(one -> one.card().procedure().find(id).stream()).findFirst()
                .map((Step step) -> step.number() + " " + step.title()).orElse(id.value());
    }

    /** Rework is offered only where one step is allowed for all of them. */
    private void offerReturns() {
        List<StepId> common = Suspects.returns(chosen.getValue());
        returnTo.setItems(common);
        disposition.setItemEnabledProvider(choice -> choice != Disposition.REWORK || !common.isEmpty());
        if (common.isEmpty() && disposition.getValue() == Disposition.REWORK) {
            disposition.clear();
        }
    }

    private void decide() {
        Set<Suspects.One> ticked = chosen.getValue();
        if (ticked.isEmpty() || disposition.isEmpty()) {
            told.refused("Choose first", ticked.isEmpty() ? "No traveller is ticked." : "Nothing is chosen.",
                    "Tick the travellers and choose what becomes of their pieces.");
            return;
        }
        told.signer(pin).ifPresent(signer -> decide(ticked, signer));
    }

    private void decide(Set<Suspects.One> ticked, Signer signer) {
        Disposition how = disposition.getValue();
        Map<TravellerId, Integer> numbers = ticked.stream()
                .collect(Collectors.toMap(Suspects.One::id, one -> one.open().number(), (first, second) -> first));
        Optional<StepId> back = how == Disposition.REWORK ? returnTo.getOptionalValue() : Optional.empty();
        told.outcome(() -> actions.decideTogether(desk.actor(), numbers, how, back, reason.getValue(), signer))
                .ifPresent(decided -> done.accept(Words.count(decided.size(), "traveller", "travellers") + ": "
                        + Phrases.disposition(how) + "."));
    }
}
