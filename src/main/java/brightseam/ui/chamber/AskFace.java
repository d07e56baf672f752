package brightseam.ui.chamber;

import brightseam.ui.parts.Action;
import brightseam.ui.parts.CautionList;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.TextPad;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import java.util.ArrayList;
import java.util.List;

/** Draws what is asked before something counts: what to check, the reason, the PIN, each by itself. */
final class AskFace {

    private static final int PIN_DIGITS = 4;
    private static final int WORDS_MAX = 120;

    private final Hands hands;
    private final String notice;

    AskFace(Hands hands, String notice) {
        this.hands = hands;
        this.notice = notice;
    }

    Living draw(WorkCard card, Asked asked) {
        Act.Confirm confirm = asked.act().confirm().orElseThrow();
        Action back = Action.other("Back", pressed -> hands.goesBack());
        switch (asked.stage()) {
            case CAUTIONS -> {
                card.add(Texts.lines(confirm.lines()), CautionList.of(confirm.cautions(), notice));
                card.actions(Action.main(confirm.cautions().isEmpty() ? asked.act().words() : "I have checked each",
                        pressed -> hands.confirms()), back);
            }
            case REASON -> reason(card, asked, confirm, back);
            case SCAN -> {
                card.add(Texts.ask(confirm.scan().orElseThrow()), Texts.lines(asked.scanned()));
                Action all = Action.main("These are all", pressed -> hands.confirms());
                all.setEnabled(!asked.scanned().isEmpty());
                card.actions(all, back);
            }
            case PIN, NOTHING_MORE -> {
                KeyPad pad = KeyPad.pin(confirm.sign().orElse("Your PIN"), PIN_DIGITS);
                pad.addEnteredListener(entered -> hands.signs(entered.value()));
                List<String> lines = new ArrayList<>(confirm.lines());
                asked.reason().ifPresent(why -> lines.add("Reason: " + why));
                card.add(Texts.lines(lines), Texts.beside(pad));
                card.actions(back);
            }
        }
        return Living.STILL;
    }

    private void reason(WorkCard card, Asked asked, Act.Confirm confirm, Action back) {
        card.add(Texts.lines(confirm.lines()));
        if (asked.typing()) {
            TextPad pad = new TextPad("Why?", "That is why", WORDS_MAX);
            pad.addEnteredListener(entered -> hands.because(
                    entered.value().substring(0, Math.min(WORDS_MAX, entered.value().length()))));
            card.add(pad);
            card.actions(back);
            return;
        }
        List<Component> reasons = new ArrayList<>();
        confirm.reasons().forEach(why -> reasons.add(Action.main(why, pressed -> hands.because(why))));
        reasons.add(Action.other("Other words", pressed -> hands.types()));
        card.add(Texts.choices(reasons));
        card.actions(back);
    }
}
