package brightseam.ui.desk;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.people.Recognition;
import brightseam.people.Signer;
import brightseam.ui.parts.VerdictBand;
import brightseam.words.Explanation;
import com.vaadin.flow.component.textfield.PasswordField;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Tells what an action came to: done, refused with reason and way out, not stored, or a field with a wrong form. */
public final class Told {

    private final Desk desk;
    private final VerdictBand band;

    Told(Desk desk, VerdictBand band) {
        this.desk = desk;
        this.band = band;
    }

    /** Says that something was done. */
    public void done(String word, String reason) {
        band.accepted(word, reason);
    }

    /** Says that something was not done, why, and what to do. */
    public void refused(String word, String reason, String wayOut) {
        band.refused(word, reason, wayOut);
    }

    /** Says every one of {@code refusals}. */
    public void refused(List<Refusal> refusals) {
        List<Explanation> all = refusals.stream().map(desk.wording()::explain).distinct().toList();
        band.refused(all.getFirst().word(),
                all.stream().map(Explanation::reason).distinct().collect(Collectors.joining(" ")),
                all.stream().map(Explanation::wayOut).distinct().collect(Collectors.joining(" ")));
    }

    /** Does {@code act} and tells a refusal or a failure; what came out of it where it was done. */
    public <R> Optional<R> outcome(Supplier<Outcome<R>> act) {
        return guarded(() -> switch (act.get()) {
            case Outcome.Done<R> done -> Optional.of(done.result());
            case Outcome.Refused<R> refused -> {
                refused(refused.refusals());
                yield Optional.empty();
            }
        });
    }

    /** As {@link #outcome}, for the register of people; whether it was done. */
    public boolean decision(Supplier<? extends Decision<?>> act) {
        return guarded(() -> switch (act.get()) {
            case Decision.Accepted<?> accepted -> Optional.of(accepted);
            case Decision.Refused<?> refused -> {
                refused(refused.refusals());
                yield Optional.<Decision<?>>empty();
            }
        }).isPresent();
    }

    /** Recognises the person who is signed in by the PIN in {@code pin} and empties the field; tells a wrong one. */
    public Optional<Signer> signer(PasswordField pin) {
        String given = pin.getValue();
        pin.clear();
        return guarded(() -> signer(desk.signing(given)));
    }

    /** As {@link #signer(PasswordField)}, for somebody else with {@code badge} at this desk. */
    public Optional<Signer> signer(BadgeId badge, PasswordField pin) {
        String given = pin.getValue();
        pin.clear();
        return guarded(() -> signer(desk.signing(badge, given)));
    }

    private Optional<Signer> signer(Recognition recognition) {
        return switch (recognition) {
            case Recognition.Recognised recognised -> Optional.of(recognised.signer());
            case Recognition.NotRecognised not -> {
                refused(not.refusals());
                yield Optional.empty();
            }
        };
    }

    /** Does {@code act}; a wrong form and a failed disk are told and come out empty. */
    public <R> Optional<R> guarded(Supplier<Optional<R>> act) {
        try {
            return act.get();
        } catch (NotStoredException lost) {
            band.refused("Not stored", "The disk did not take it. It does not count.",
                    "Do it again; if it happens again, call whoever looks after the server.");
        } catch (IllegalArgumentException malformed) {
            band.refused("Check the form", sentence(malformed.getMessage()), "Correct it and send again.");
        }
        return Optional.empty();
    }

    private static String sentence(String fault) {
        String words = fault == null ? "something in it has a wrong form" : fault;
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + ".";
    }
}
