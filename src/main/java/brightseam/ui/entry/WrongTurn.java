package brightseam.ui.entry;

import brightseam.ui.parts.Action;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;

/** A page instead of the one that was asked for: what happened and what to do. */
@StyleSheet("context://frontend/bench.css")
abstract class WrongTurn extends Composite<ScreenFrame> {

    private final Frames frames;

    WrongTurn(Frames frames) {
        this.frames = frames;
    }

    @Override
    protected final ScreenFrame initContent() {
        return frames.make();
    }

    final void say(String title, String words) {
        WorkCard card = new WorkCard("", title);
        card.instruction(words);
        card.actions(Action.main("To my screen", pressed ->
                getUI().ifPresent(ui -> ui.getPage().setLocation("."))));
        getContent().add(card);
    }
}
