package brightseam.ui.entry;

import brightseam.kernel.BadgeId;
import brightseam.people.PinRules;
import brightseam.people.shell.People;
import brightseam.people.shell.PinChange;
import brightseam.people.shell.SignIn;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.WorkCard;
import brightseam.words.Wording;
import brightseam.words.Words;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.ZoneId;

/** Whoever is signed in chooses another PIN. */
@Route("pin")
@PageTitle("Choose another PIN")
@PermitAll
@StyleSheet("context://frontend/bench.css")
class PinView extends Composite<ScreenFrame> {

    private final Frames frames;
    private final WorkCard card = new WorkCard("", "Choose another PIN");

    PinView(SignIn signIn, PinChange pins, People people, Wording wording, Frames frames) {
        this.frames = frames;
        BadgeId badge = signIn.here().orElseThrow().badge();
        card.head("Badge " + badge, "Choose another PIN");
        card.instruction("Enter the PIN that you have now."
                + people.pinEnds(badge).map(end -> " It ends " + Words.stamp(end, ZoneId.systemDefault()) + ".")
                        .orElse(""));
        KeyPad pad = KeyPad.pin("PIN of badge " + badge, PinRules.DIGITS_MIN);
        pad.addEnteredListener(entered -> new NewPin(card, wording, pins, badge, entered.value(), fresh -> done())
                .ask("It takes the place of the one that you entered."));
        card.add(pad);
        card.actions(Action.other("Leave it", pressed -> back()));
        getContent().add(card);
    }

    @Override
    protected ScreenFrame initContent() {
        return frames.make();
    }

    private void done() {
        card.removeAll();
        card.verdict().accepted("PIN changed", "The new one counts from now on; the old one never again.");
        card.instruction("It signs for you alone. Tell it to nobody, the administrator included.");
        card.actions(Action.main("Go on", pressed -> back()));
    }

    private void back() {
        getUI().ifPresent(ui -> ui.navigate(HomeView.class));
    }
}
