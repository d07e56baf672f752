package brightseam.ui.trace;

import brightseam.kernel.TravellerId;
import brightseam.people.Signer;
import brightseam.trace.Reach;
import brightseam.trace.Reached;
import brightseam.trace.shell.Traces;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Puts everything that a thing touched under suspicion, with one reason and one signature. */
final class MarkForm extends Div {

    private final Desk desk;
    private final Told told;
    private final Traces traces;
    private final Travellers travellers;
    private final TravellerActions actions;
    private final TextArea reason = new TextArea("What proved bad, or may have (goes into every record)");
    private final PasswordField pin = Forms.pin("Your PIN");
    private final Reach asked;
    private final Consumer<String> done;

    MarkForm(Desk desk, Told told, Traces traces, Travellers travellers, TravellerActions actions, Reach asked,
            Consumer<String> done) {
        this.desk = desk;
        this.told = told;
        this.traces = traces;
        this.travellers = travellers;
        this.actions = actions;
        this.asked = asked;
        this.done = done;
        addClassName("desk-form");
        reason.setMaxLength(Decisions.WORDS_MAX - 80);
        add(Forms.note("Everything in this answer goes into quarantine, whatever its state: on its way, in the"
                        + " chamber, closed. Scrapped pieces are left out. Each is lifted by a disposition."),
                reason, Forms.row(pin, Forms.act("Put all of it under suspicion", this::mark)));
    }

    private void mark() {
        if (reason.getValue().isBlank()) {
            told.refused("Give a reason", "It goes into every record.", "Say what proved bad, or may have.");
            return;
        }
        told.signer(pin).ifPresent(this::mark);
    }

    /** Asks anew, so that what was touched since is marked too. */
    private void mark(Signer signer) {
        String words = TraceWords.capital(TraceWords.thing(asked.question())) + ": " + reason.getValue().strip();
        Reach reach = traces.reach(asked.question());
        List<TravellerId> all = reach.travellers().stream().map(one -> one.now().traveller()).toList();
        Marking marking = Marking.of(reach, traces.touches(asked.question(), all), already(reach, words));
        if (marking.touched().isEmpty()) {
            told.refused("Nothing to mark", marking.words(), "Lift it where it is, or give another reason.");
            return;
        }
        told.outcome(() -> actions.markSuspect(desk.actor(), marking.touched(), words, signer)).ifPresent(marked ->
                done.accept(marking.words()));
    }

    private Set<TravellerId> already(Reach reach, String words) {
        return reach.travellers().stream().map(Reached::now).filter(now -> now.suspect()).map(now -> now.traveller())
                .filter(id -> travellers.find(id).filter(card -> card.traveller().openNonconformances().stream()
                        .anyMatch(open -> open.cause() == Nonconformance.Cause.SUSPECT
                                && open.text().equals(words))).isPresent())
                .collect(Collectors.toSet());
    }
}
