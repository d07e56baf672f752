package brightseam.ui.entry;

import brightseam.people.Person;
import brightseam.people.shell.People;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.people.shell.Tablets;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.ArrayList;
import java.util.List;

/** Hand the tablet over, sign out, or go to another screen. */
@Route("leave")
@PageTitle("Hand over or sign out")
@PermitAll
@StyleSheet("context://frontend/bench.css")
class LeaveView extends Composite<ScreenFrame> {

    private final SignIn signIn;
    private final Frames frames;

    LeaveView(SignIn signIn, Tablets tablets, People people, Frames frames) {
        this.signIn = signIn;
        this.frames = frames;
        SignedInPerson here = signIn.here().orElseThrow();
        WorkCard card = new WorkCard("Tablet " + here.tablet(), here.displayName());
        List<Component> choices = new ArrayList<>();
        people.find(here.badge()).map(Person::roles).map(Place::of).orElse(List.of()).forEach(place ->
                choices.add(Action.other("Go to the " + place.title().toLowerCase(java.util.Locale.ROOT),
                        pressed -> getUI().ifPresent(ui -> ui.navigate(place.path())))));
        choices.add(Action.other("Choose another PIN",
                pressed -> getUI().ifPresent(ui -> ui.navigate(PinView.class))));
        choices.add(Action.main("Hand over: the card stays open here", pressed -> leave()));
        choices.add(Action.main("Sign out and close the card", pressed -> {
            tablets.closeCard(here.tablet());
            leave();
        }));
        card.add(Choices.of(choices));
        getContent().add(card);
    }

    @Override
    protected ScreenFrame initContent() {
        return frames.make();
    }

    private void leave() {
        signIn.signOut();
        getUI().ifPresent(ui -> ui.getPage().setLocation("sign-in"));
    }
}
