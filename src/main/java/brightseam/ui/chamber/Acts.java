package brightseam.ui.chamber;

import brightseam.ui.parts.Action;
import brightseam.ui.parts.Texts;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Draws what can be done; what cannot be done now stands there dashed, and says why. */
final class Acts {

    private final List<Component> drawn = new ArrayList<>();
    private final List<Paragraph> reasons = new ArrayList<>();
    private final Map<Object, Action> buttons = new HashMap<>();

    /**
     * Draws the actions of {@code card}.
     *
     * @param before what was drawn before; its buttons stay where they mean the same, so that no touch is lost
     */
    Acts(ChamberCard card, Hands hands, Optional<Acts> before) {
        card.ways().stream().filter(ChamberCard.Way::main).forEach(way -> drawn.add(way(way, hands, before)));
        card.acts().forEach(act -> {
            drawn.add(kept(act.still(), before, () -> button(act, hands)));
            act.held().ifPresent(why -> {
                Paragraph reason = Texts.words("held", why);
                drawn.add(reason);
                reasons.add(reason);
            });
        });
        card.ways().stream().filter(way -> !way.main()).forEach(way -> drawn.add(way(way, hands, before)));
    }

    private Action way(ChamberCard.Way way, Hands hands, Optional<Acts> before) {
        return kept(way, before, () -> way.main() ? Action.main(way.words(), pressed -> hands.goes(way.path()))
                : Action.other(way.words(), pressed -> hands.goes(way.path())));
    }

    private Action kept(Object meaning, Optional<Acts> before, Supplier<Action> made) {
        Action button = before.map(old -> old.buttons.get(meaning)).orElseGet(made);
        buttons.put(meaning, button);
        return button;
    }

    Component[] drawn() {
        return drawn.toArray(Component[]::new);
    }

    /** Says anew why what cannot be done cannot be done. */
    void say(ChamberCard same) {
        List<String> words = same.acts().stream().flatMap(act -> act.held().stream()).toList();
        for (int i = 0; i < Math.min(words.size(), reasons.size()); i++) {
            reasons.get(i).setText(words.get(i));
        }
    }

    static Action button(Act act, Hands hands) {
        Action button = act.main() ? Action.main(act.words(), pressed -> hands.touches(act))
                : Action.other(act.words(), pressed -> hands.touches(act));
        button.setEnabled(act.held().isEmpty());
        return button;
    }
}
