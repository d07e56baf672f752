package brightseam.ui.entry;

import brightseam.people.Person;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;

/** Sends each role to its screen; whoever has several chooses. */
@Route("")
@PageTitle("Brightseam")
@PermitAll
@StyleSheet("context://frontend/bench.css")
class HomeView extends Composite<ScreenFrame> implements BeforeEnterObserver {

    private final SignIn signIn;
    private final People people;
    private final Frames frames;

    HomeView(SignIn signIn, People people, Frames frames) {
        this.signIn = signIn;
        this.people = people;
        this.frames = frames;
    }

    @Override
    protected ScreenFrame initContent() {
        return frames.make();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        List<Role> roles = signIn.here().map(SignedInPerson::badge).flatMap(people::find).map(Person::roles)
                .orElse(List.of());
        List<Place> places = Place.of(roles);
        if (Place.first(roles).size() == 1) {
            entering.forwardTo(Place.first(roles).getFirst().path());
            return;
        }
        WorkCard card = new WorkCard("", places.isEmpty() ? "No screen for you yet" : "Where to?");
        if (places.isEmpty()) {
            card.instruction("Your badge has no role. Ask the administrator to give you one.");
        }
        card.add(Choices.of(places.stream().<Component>map(place -> Action.main(place.words(),
                pressed -> getUI().ifPresent(ui -> ui.navigate(place.path())))).toList()));
        getContent().removeAll();
        getContent().add(card);
    }
}
