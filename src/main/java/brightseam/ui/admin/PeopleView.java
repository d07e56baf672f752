package brightseam.ui.admin;

import brightseam.kernel.BadgeId;
import brightseam.people.Person;
import brightseam.people.PersonCommand;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.ui.desk.Csv;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.words.Words;
import brightseam.words.Wording;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The people of the shop and the register of stamps. */
@Route("shop/people")
@PageTitle("People")
@RolesAllowed("ADMINISTRATOR")
class PeopleView extends DeskPage {

    private final People people;
    private final DeskTable<Person> table = new DeskTable<Person>("Everybody who ever had a badge",
            "Nobody has a badge. Register a person above.")
            .cell("Badge", person -> Links.to("shop/people/" + person.badge(), person.badge().value()))
            .text("Name", Person::name).text("Roles", PeopleView::roles)
            .text("Stamp", person -> person.stamp().orElse("none")).text("State", PeopleView::state)
            .text("PIN", this::pin);

    PeopleView(Desk desk, People people) {
        super(desk, "People");
        this.people = people;
        show(Forms.panel("Register a person", registration()),
                Forms.panel("Everybody", table.file(() -> csv(people.all()))),
                Forms.panel("Stamps", new Paragraph(Links.to("shop/stamps", "Register of stamps"),
                        new Span(": every stamp ever issued, and what became of it"))));
        refresh();
    }

    private void refresh() {
        table.show(people.all());
    }

    private Div registration() {
        TextField badge = Forms.text("Badge", "begins with P-, such as P-0107");
        TextField name = Forms.text("Name", "as printed beside a signature");
        CheckboxGroup<Role> roles = roleChoice();
        PasswordField pin = Forms.pin("First PIN, 4 to 8 digits");
        return Forms.row(badge, name, roles, pin, Forms.act("Register", () -> {
            boolean registered = told().guarded(() -> {
                BadgeId label = badgeLabel(badge.getValue());
                return Optional.of(told().decision(() -> people.run(
                        new PersonCommand.Register(
                                desk().origin(), label, name.getValue(), List.copyOf(roles.getValue()))))
                        && told().decision(() -> people.setPin(desk().origin(), label, pin.getValue())));
            }).orElse(false);
            pin.clear();
            refresh();
            if (registered) {
                told().done("Registered", name.getValue() + ", " + badge.getValue() + ". Print the badge. At the first"
                        + " sign-in the first PIN is exchanged for one that you do not know.");
                badge.clear();
                name.clear();
            }
        }));
    }

    /** A choice of roles. */
    static CheckboxGroup<Role> roleChoice() {
        CheckboxGroup<Role> roles = new CheckboxGroup<>("Roles");
        roles.setItems(Role.values());
        roles.setItemLabelGenerator(role -> Wording.words(role.name()));
        return roles;
    }

    /** The roles of {@code person} in words. */
    static String roles(Person person) {
        return person.roles().stream().map(role -> Wording.words(role.name())).collect(Collectors.joining(", "));
    }

    /** Whether {@code person} can sign in. */
    static String state(Person person) {
        if (!person.active()) {
            return "deactivated";
        }
        return person.pinLocked() ? "LOCKED by wrong PINs" : person.pinSet() ? "active" : "no PIN yet";
    }

    private String pin(Person person) {
        return person.active() ? pin(people, person, desk()) : "";
    }

    /** What the PIN of {@code person} is good for. */
    static String pin(People people, Person person, Desk desk) {
        return people.pinStanding(person.badge()).map(standing -> switch (standing) {
            case FIRST -> "first PIN: its owner has to choose another one";
            case EXPIRED -> "HAS ENDED: its owner chooses another one at the next sign-in";
            case GOOD, ENDS_SOON -> people.pinEnds(person.badge())
                    .map(end -> "good until " + Words.stamp(end, desk.zone())).orElse("good");
        }).orElse("none");
    }

    private static BadgeId badgeLabel(String text) {
        if (!text.strip().startsWith("P-")) {
            throw new IllegalArgumentException("badge: begins with P-");
        }
        return new BadgeId(text.strip());
    }

    private static String csv(List<Person> all) {
        return Csv.write(List.of("badge", "name", "roles", "stamp", "state"), all.stream().map(person -> List.of(
                person.badge().value(), person.name(), roles(person), person.stamp().orElse(""), state(person)))
                .toList());
    }
}
