package brightseam.ui.chamber;

import brightseam.ui.parts.Action;
import brightseam.ui.parts.Texts;
import com.vaadin.flow.component.Component;
import java.util.ArrayList;
import java.util.List;

/** Draws what can be done; what cannot be done now stands there dashed, and says why. */
final class Acts {

    private Acts() {}

    static List<Component> of(ChamberCard card, Hands hands) {
        List<Component> drawn = new ArrayList<>();
        card.acts().forEach(act -> {
            drawn.add(button(act, hands));
            act.held().ifPresent(why -> drawn.add(Texts.words("held", why)));
        });
        card.ways().forEach(way -> drawn.add(Action.other(way.words(), pressed -> hands.goes(way.path()))));
        return drawn;
    }

    static Action button(Act act, Hands hands) {
        Action button = act.main() ? Action.main(act.words(), pressed -> hands.touches(act))
                : Action.other(act.words(), pressed -> hands.touches(act));
        button.setEnabled(act.held().isEmpty());
        return button;
    }
}
