package brightseam.ui.chamber;

import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.html.Div;
import java.util.Optional;

/**
 * The strip and below it the card. The card is drawn anew only where something else is to be done; what is measured
 * changes words and digits in their places, and no button under a finger.
 */
final class ChamberScreen extends Div {

    private final Faces faces;
    private final Hands hands;
    private final StripFace strip = new StripFace();
    private final WorkCard card = new WorkCard("", "");
    private Optional<ChamberCard> shown = Optional.empty();
    private Optional<Acts> acts = Optional.empty();
    private Living living = Living.STILL;

    ChamberScreen(Faces faces, Hands hands) {
        this.faces = faces;
        this.hands = hands;
        addClassName("chamber-screen");
        add(strip, card);
    }

    /** Shows {@code next}, drawn anew only where it differs, and what is live in it. */
    void show(ChamberCard next, Live live) {
        card.head(next.over(), next.title());
        if (!shown.equals(Optional.of(next.still()))) {
            shown = Optional.of(next.still());
            draw(next);
        }
        acts.ifPresent(drawn -> drawn.say(next));
        strip.show(live.strip());
        living.tell(next.doing(), live);
    }

    private void draw(ChamberCard next) {
        card.removeAll();
        card.getElement().getClassList().remove("arc-card");
        card.getElement().setAttribute("data-doing", next.doing().getClass().getSimpleName());
        Acts drawn = new Acts(next, hands, acts);
        acts = Optional.of(drawn);
        card.actions(drawn.drawn());
        living = faces.draw(card, next.doing());
    }

    /** Says what became of a scan or a touch. */
    void tell(Verdict verdict) {
        switch (verdict) {
            case Verdict.Accepted accepted -> card.verdict().accepted(accepted.word(), accepted.reason());
            case Verdict.Refused refused ->
                card.verdict().refused(refused.word(), refused.reason(), refused.wayOut());
            case Verdict.Silent silent -> card.verdict().clear();
            case Verdict.HandOver over -> card.verdict().clear();
        }
    }
}
