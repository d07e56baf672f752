package brightseam.ui.baths;

import brightseam.line.Bath;
import brightseam.line.BathCommand;
import brightseam.line.BathLock;
import brightseam.line.BathVerdict;
import brightseam.line.shell.Baths;
import brightseam.people.Signer;
import brightseam.traveller.shell.ProcessControl;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** Stops a bath, says that it was bad, and allows it again; each with a reason and a PIN. */
final class LockForms extends Div {

    private static final int REASON_MAX = 200;

    private final Desk desk;
    private final Told told;
    private final Baths baths;
    private final ProcessControl control;
    private final Bath bath;
    private final Runnable after;

    LockForms(Desk desk, Told told, Baths baths, ProcessControl control, Bath bath, Runnable after) {
        this.desk = desk;
        this.told = told;
        this.baths = baths;
        this.control = control;
        this.bath = bath;
        this.after = after;
        addClassName("bath-locks");
        bath.locks().forEach(lock -> add(unlock(lock)));
        if (bath.lock(BathLock.Cause.BY_HAND).isEmpty()) {
            add(Forms.panel("Lock it", Forms.note("Nothing goes in until it is unlocked. Pieces that are in it come out"
                    + " as usual, and nothing is said about them."),
                    signed("Reason for the lock", "Lock it and sign", this::lock)));
        }
        if (bath.lock(BathLock.Cause.FOUND_BAD).isEmpty()) {
            add(Forms.panel("Found bad", Forms.note(badNote()),
                    signed("What was found", "Found bad: lock it and sign", this::findBad)));
        }
    }

    private String badNote() {
        int count = control.suspects(bath.station()).size();
        return "Locks it, and puts under suspicion whatever went in since its last good sample: now "
                + (count == 0 ? "nothing" : Words.count(count, "traveller", "travellers"))
                + ". A good analysis and a signature lift the lock; each suspect waits for its own disposition.";
    }

    private Component unlock(BathLock lock) {
        String since = "Since " + Words.clockTime(lock.at().wall(), desk.now().wall(), desk.zone()) + " by "
                + lock.by() + lock.reason().map(reason -> ": " + reason).orElse("") + ".";
        if (lock.cause() == BathLock.Cause.OUT_OF_LIMITS) {
            return Forms.panel("Locked: out of limits",
                    Forms.note(since + " The next analysis with everything in limits opens it by itself."));
        }
        boolean byHand = lock.cause() == BathLock.Cause.BY_HAND;
        return Forms.panel("Locked: " + (byHand ? "by hand" : "found bad"), Forms.note(since + (byHand ? ""
                        : " It takes a good sample taken after that, and process control's signature.")),
                signed("Reason to unlock", "Unlock and sign", (reason, signer) -> carriedOut("Unlocked",
                        new BathCommand.UnlockBath(
                                bath.station(), lock.cause(), reason, desk.origin(), signer))));
    }

    /** Answers whether it was done. */
    private boolean lock(String reason, Signer signer) {
        return carriedOut("Locked", new BathCommand.LockBath(bath.station(), reason, desk.origin(), signer));
    }

    private boolean findBad(String reason, Signer signer) {
        Optional<BathVerdict> verdict = told.outcome(
                () -> control.findBad(desk.actor(), bath.station(), reason, signer));
        verdict.ifPresent(found -> told.done("Locked", suspects(found)));
        return verdict.isPresent();
    }

    /** Who is suspect by {@code verdict}, in a sentence. */
    static String suspects(BathVerdict verdict) {
        return verdict.suspects().isEmpty() ? "Nothing went in since its last good sample."
                : "Suspect now, on every screen: " + verdict.suspects().stream().map(Object::toString)
                        .collect(Collectors.joining(", ")) + ".";
    }

    private boolean carriedOut(String word, BathCommand command) {
        boolean done = told.outcome(() -> baths.execute(command)).isPresent();
        if (done) {
            told.done(word, "The bath of " + bath.station() + " is " + word.toLowerCase(java.util.Locale.ROOT) + ".");
        }
        return done;
    }

    private Component signed(String label, String words, BiFunction<String, Signer, Boolean> act) {
        TextField reason = new TextField(label);
        reason.setMaxLength(REASON_MAX);
        PasswordField pin = Forms.pin("Your PIN");
        return Forms.row(reason, pin, Forms.act(words, () -> told.signer(pin).ifPresent(signer -> {
            if (told.guarded(() -> Optional.of(act.apply(reason.getValue(), signer))).orElse(false)) {
                after.run();
            }
        })));
    }
}
