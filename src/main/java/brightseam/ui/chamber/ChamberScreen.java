package brightseam.ui.chamber;

import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.html.Div;
import java.util.Optional;
import java.util.function.Consumer;

/** The strip and below it the card; draws only what has changed, and lets live what lives. */
final class ChamberScreen extends Div {

    private final Faces faces;
    private final Hands hands;
    private final StripFace strip = new StripFace();
    private final WorkCard card = new WorkCard("", "");
    private Optional<ChamberCard> shown = Optional.empty();
    private Consumer<Live> living = live -> { };

    ChamberScreen(Faces faces, Hands hands) {
        this.faces = faces;
        this.hands = hands;
        addClassName("chamber-screen");
        add(strip, card);
    }

    /** Shows {@code next}, drawn anew only where it differs, and what is live in it. */
    void show(ChamberCard next, Live live) {
        if (!shown.equals(Optional.of(next))) {
            shown = Optional.of(next);
            card.removeAll();
            card.getElement().getClassList().remove("arc-card");
            card.getElement().setAttribute("data-doing", next.doing().getClass().getSimpleName());
            card.head(next.over(), next.title());
            card.actions(Acts.of(next, hands).toArray(com.vaadin.flow.component.Component[]::new));
            living = faces.draw(card, next.doing());
        }
        live(live);
    }

    /** Shows what has changed by itself. */
    void live(Live live) {
        strip.show(live.strip());
        living.accept(live);
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
