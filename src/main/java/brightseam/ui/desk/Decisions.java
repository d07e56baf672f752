package brightseam.ui.desk;

import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.people.Signer;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import com.vaadin.flow.component.textfield.PasswordField;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What the forms about one traveller share: who sits here, where the outcome is told, what follows it.
 *
 * @param shown the traveller as the page shows it now
 * @param done told word and reason once something is on disk
 */
public record Decisions(Desk desk, Told told, TravellerId id, Supplier<Card> shown, Done done) {

    /** The longest reason or remark that a form takes, in characters; the shop's own choice, to fit a print. */
    public static final int WORDS_MAX = 400;

    /** Shows what follows. */
    public interface Done {
        /** Says {@code word} and {@code reason} when the page shows how things stand now. */
        void with(String word, String reason);
    }

    /** Who acts, with what the page shows before their eyes. */
    public Actor actor() {
        return desk.actor().seeing(List.of(shown.get()));
    }

    /** Recognises the PIN in {@code pin}, empties it, then does {@code act} and says {@code word} where it was done. */
    public void signed(PasswordField pin, String word, String reason, Function<Signer, Outcome<?>> act) {
        told.signer(pin).ifPresent(signer -> plain(word, reason, () -> act.apply(signer)));
    }

    /** Does {@code act}, which needs no signature. */
    public void plain(String word, String reason, Supplier<Outcome<?>> act) {
        if (told.outcome(() -> widened(act.get())).isPresent()) {
            done.with(word, reason);
        }
    }

    /** The result is not looked at; an empty list of it would still be one. */
    private static Outcome<Boolean> widened(Outcome<?> outcome) {
        return switch (outcome) {
            case Outcome.Done<?> done -> new Outcome.Done<>(true, done.entries());
            case Outcome.Refused<?> refused -> new Outcome.Refused<>(refused.refusals());
        };
    }
}
