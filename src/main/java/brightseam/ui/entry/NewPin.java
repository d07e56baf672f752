package brightseam.ui.entry;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.people.PersonEvent;
import brightseam.people.PinLife;
import brightseam.people.PinRules;
import brightseam.people.shell.PinChange;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.WorkCard;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import java.util.function.Consumer;

/** Asks on a card for a new PIN, twice, and puts it in the place of the old one. */
final class NewPin {

    private final WorkCard card;
    private final Wording wording;
    private final PinChange pins;
    private final BadgeId badge;
    private final String old;
    private final Consumer<String> chosen;

    /** {@code old} is the PIN in use; {@code chosen} is given the new one once it counts. */
    NewPin(WorkCard card, Wording wording, PinChange pins, BadgeId badge, String old, Consumer<String> chosen) {
        this.card = card;
        this.wording = wording;
        this.pins = pins;
        this.badge = badge;
        this.old = old;
        this.chosen = chosen;
    }

    /** Asks for it; {@code why} stands above the pad. */
    void ask(String why) {
        card.head("Badge " + badge, "Choose your own PIN");
        card.removeAll();
        card.instruction(why + " " + PinRules.DIGITS_MIN + " to " + PinRules.DIGITS_MAX
                + " digits, none of your last " + PinLife.LAST_ONES + ". Nobody else ever needs to know it.");
        KeyPad pad = KeyPad.pin("New PIN of badge " + badge, PinRules.DIGITS_MIN);
        pad.addEnteredListener(entered -> again(why, entered.value()));
        card.add(pad);
    }

    private void again(String why, String fresh) {
        card.verdict().clear();
        card.head("Badge " + badge, "The same PIN again");
        card.removeAll();
        card.instruction("Enter the new PIN once more, so that no slip locks you out.");
        KeyPad pad = KeyPad.pin("New PIN of badge " + badge + ", again", PinRules.DIGITS_MIN);
        pad.addEnteredListener(entered -> {
            if (entered.value().equals(fresh)) {
                put(why, fresh);
            } else {
                card.verdict().refused("Two PINs", "The two entries differ.", "Begin again with the new PIN.");
                ask(why);
            }
        });
        card.add(pad);
    }

    private void put(String why, String fresh) {
        switch (pins.change(badge, old, fresh)) {
            case Decision.Accepted<PersonEvent> accepted -> chosen.accept(fresh);
            case Decision.Refused<PersonEvent> refused -> {
                Explanation told = wording.explain(refused.refusals().getLast());
                card.verdict().refused(told.word(), told.reason(), told.wayOut());
                ask(why);
            }
        }
    }
}
