package brightseam.ui.admin;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.people.Person;
import brightseam.people.PersonCommand;
import brightseam.people.Qualification;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.people.shell.SignedWork;
import brightseam.procedure.StepKind;
import brightseam.procedure.Vocabulary;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.TwoPresses;
import brightseam.words.Words;
import brightseam.words.Wording;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** One person: roles, PIN, stamp, qualifications. */
@Route("shop/people/:badge")
@PageTitle("Person")
@RolesAllowed("ADMINISTRATOR")
class PersonView extends DeskPage implements BeforeEnterObserver {

    private final People people;
    private final Vocabulary vocabulary;
    private Optional<BadgeId> badge = Optional.empty();

    PersonView(Desk desk, People people, Vocabulary vocabulary) {
        super(desk, "Person");
        this.people = people;
        this.vocabulary = vocabulary;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        badge = label(entering, "badge", BadgeId::new);
        refresh();
    }

    private void refresh() {
        badge.flatMap(people::find).ifPresentOrElse(this::show, () -> {
            head("No such badge", "Nobody ever had that badge.");
            show(Links.to("shop/people", "Back to people"));
        });
    }

    private void show(Person person) {
        head(person.name() + " " + person.badge(), PeopleView.roles(person) + ". " + PeopleView.state(person) + ".");
        if (!person.active()) {
            show(Forms.note("The badge is closed for good. Everything that was signed under it stays in the records."),
                    Forms.panel("Qualifications", qualifications(person)));
            return;
        }
        show(Forms.panel("Roles", roles(person)), Forms.panel("PIN", pin(person)),
                Forms.panel("Inspector's stamp", stamp(person)),
                Forms.panel("Qualifications", qualifications(person), granting(person)),
                Forms.panel("Deactivate", Forms.note("The badge is closed for good and never given to anybody else."),
                        TwoPresses.withReason("Deactivate", person.name(), reason ->
                                run("Deactivated", () -> people.run(
                                new PersonCommand.Deactivate(desk().origin(), person.badge(), reason))))));
    }

    private Div roles(Person person) {
        CheckboxGroup<Role> roles = PeopleView.roleChoice();
        roles.setValue(java.util.Set.copyOf(person.roles()));
        return Forms.row(roles, Forms.button("Change roles", () -> run("Roles changed", () -> people.run(
                new PersonCommand.ChangeRoles(desk().origin(), person.badge(), List.copyOf(roles.getValue()))))));
    }

    /** One's own PIN is changed with the old one, like everybody's. */
    private Div pin(Person person) {
        if (person.badge().equals(desk().origin().by())) {
            return new Div(Links.to("pin", "Choose another PIN"));
        }
        PasswordField pin = Forms.pin("First PIN, 4 to 8 digits");
        Div row = Forms.row(pin, Forms.button("Set first PIN", () -> {
            String entered = pin.getValue();
            pin.clear();
            run("First PIN set", () -> people.setPin(desk().origin(), person.badge(), entered));
        }));
        if (person.pinLocked()) {
            row.add(Forms.button("Unlock the badge", () -> run("Unlocked",
                    () -> people.run(new PersonCommand.UnlockPin(desk().origin(), person.badge())))));
        }
        return new Div(Forms.note("Now: " + PeopleView.pin(people, person, desk()) + ". A PIN that you set here is good"
                + " for choosing the next one alone: nobody can sign with it, you included."), row);
    }

    private Div stamp(Person person) {
        Div way = new Div(Links.to("shop/stamps", "Register of stamps"));
        if (person.stamp().isPresent()) {
            return new Div(Forms.note("Holds stamp " + person.stamp().get() + ". That it was given back, lost or voided"
                    + " is written down in the register."), way);
        }
        TextField number = Forms.text("Stamp number", "never issued before, such as BS-08");
        return new Div(Forms.row(number, Forms.button("Issue stamp", () -> run("Issued", () -> people.run(
                new PersonCommand.IssueStamp(desk().origin(), person.badge(), number.getValue().strip()))))), way);
    }

    private DeskTable<Qualification> qualifications(Person person) {
        return new DeskTable<Qualification>("Qualifications of " + person.name(),
                "None is recorded. Where a station asks for one, grant it below.")
                .text("For", qualification -> Wording.words(qualification.word()))
                .text("Holds until", qualification -> Words.stamp(qualification.until(), desk().zone())
                        + (qualification.holdsAt(desk().now().wall()) ? "" : " – EXPIRED"))
                .show(person.qualifications());
    }

    private Div granting(Person person) {
        Select<String> word = new Select<>();
        word.setLabel("For");
        word.setItems(Stream.of(vocabulary.stations().keySet().stream().sorted(),
                Arrays.stream(StepKind.values()).map(kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', '-')),
                SignedWork.words().stream()).flatMap(words -> words).distinct().toList());
        word.setItemLabelGenerator(Wording::words);
        DatePicker until = new DatePicker("Holds through");
        until.setLocale(Locale.UK);
        return Forms.row(word, until, Forms.button("Grant", () -> run("Granted", () -> {
            if (word.isEmpty() || until.isEmpty()) {
                throw new IllegalArgumentException("for what and through which day: both are asked for");
            }
            return people.run(new PersonCommand.GrantQualification(desk().origin(), person.badge(),
                    Qualification.throughDay(word.getValue(), until.getValue(), desk().zone())));
        })));
    }

    private void run(String word, Supplier<Decision<?>> act) {
        if (told().decision(act)) {
            told().done(word, badge.flatMap(people::find).map(Person::name).orElse("") + ".");
            refresh();
        }
    }
}
