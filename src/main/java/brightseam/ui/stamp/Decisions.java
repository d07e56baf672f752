package brightseam.ui.stamp;

import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.people.Signer;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.textfield.PasswordField;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What the forms of one record share: who sits here, where the outcome is told, what follows it.
 *
 * @param done told word and reason once something is on disk
 */
record Decisions(Desk desk, Told told, TravellerId id, Done done) {

    /** Shows what follows. */
    interface Done {
        void with(String word, String reason);
    }

    /** Recognises the PIN in {@code pin}, empties it, then does {@code act} and says {@code word} where it was done. */
    void signed(PasswordField pin, String word, String reason, Function<Signer, Outcome<?>> act) {
        String given = pin.getValue();
        pin.clear();
        told.guarded(() -> told.signer(given)).ifPresent(signer -> plain(word, reason, () -> act.apply(signer)));
    }

    /** Does {@code act}, which needs no signature. */
    void plain(String word, String reason, Supplier<Outcome<?>> act) {
        if (told.outcome(() -> widened(act.get())).isPresent()) {
            done.with(word, reason);
        }
    }

    static PasswordField pin() {
        return Forms.pin("Your PIN");
    }

    /** The result is not looked at; an empty list of it would still be one. */
    private static Outcome<Boolean> widened(Outcome<?> outcome) {
        return switch (outcome) {
            case Outcome.Done<?> done -> new Outcome.Done<>(true, done.entries());
            case Outcome.Refused<?> refused -> new Outcome.Refused<>(refused.refusals());
        };
    }
}
