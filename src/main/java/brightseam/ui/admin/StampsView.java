package brightseam.ui.admin;

import brightseam.kernel.Decision;
import brightseam.people.Person;
import brightseam.people.PersonCommand;
import brightseam.people.PersonEvent;
import brightseam.people.PersonEvent.OfStamp;
import brightseam.people.Role;
import brightseam.people.Stamp;
import brightseam.people.shell.People;
import brightseam.ui.desk.Csv;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.TwoPresses;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.function.Supplier;

/** The register of stamps: every one ever issued with its story; returned, lost, voided. */
@Route("shop/stamps")
@PageTitle("Stamps")
@RolesAllowed({"ADMINISTRATOR", "INSPECTOR"})
class StampsView extends DeskPage {

    private final People people;
    private final boolean keeps;
    private final DeskTable<Stamp> table = new DeskTable<>("Every stamp ever issued; a number is issued once",
            "No stamp was ever issued. An administrator issues one on an inspector's page, under People.");

    StampsView(Desk desk, People people) {
        super(desk, "Register of stamps");
        this.people = people;
        this.keeps = desk.holds(Role.ADMINISTRATOR);
        table.text("Stamp", Stamp::number).text("Holder", this::holder)
                .cell("Now", StampsView::now).cell("Story", this::story).cell("Write down", this::acts);
        show(Forms.panel("Stamps", table, Forms.row(
                Files.csv("Save as CSV", "stamps.csv", () -> csv(people.stamps())))));
        refresh();
    }

    private void refresh() {
        table.show(people.stamps());
    }

    private String holder(Stamp stamp) {
        return name(stamp) + ", " + stamp.holder();
    }

    private String name(Stamp stamp) {
        return people.find(stamp.holder()).map(Person::name).orElse("");
    }

    private static Component now(Stamp stamp) {
        Span state = new Span(StampWords.state(stamp.state()));
        state.addClassName("stamp-" + stamp.state().name().toLowerCase(java.util.Locale.ROOT));
        return state;
    }

    private Component story(Stamp stamp) {
        OrderedList lines = new OrderedList();
        lines.addClassName("desk-list");
        stamp.story().forEach(event -> lines.add(new ListItem(line(event))));
        return lines;
    }

    private String line(OfStamp event) {
        String by = people.find(event.origin().by()).map(Person::name).orElse(event.origin().by().value());
        return StampWords.line(event, by, desk().zone());
    }

    /** Its holder says that it is lost; everything else is the administrator's. */
    private Component acts(Stamp stamp) {
        Div acts = new Div();
        acts.addClassName("cell-actions");
        boolean own = stamp.holder().equals(desk().origin().by());
        if (keeps && stamp.mayReturn()) {
            acts.add(act("Returned", stamp, reason -> new PersonCommand.ReturnStamp(
                    desk().origin(), stamp.holder(), stamp.number(), reason)));
        }
        if ((keeps || own) && stamp.mayLose()) {
            acts.add(act("Lost", stamp, reason -> new PersonCommand.LoseStamp(
                    desk().origin(), stamp.holder(), stamp.number(), reason)));
        }
        if (keeps && stamp.mayVoid()) {
            acts.add(act("Voided", stamp, reason -> new PersonCommand.VoidStamp(
                    desk().origin(), stamp.holder(), stamp.number(), reason)));
        }
        return acts;
    }

    private TwoPresses act(String words, Stamp stamp, java.util.function.Function<String, PersonCommand> command) {
        return TwoPresses.withReason(words, stamp.number(),
                reason -> run(words, stamp, () -> people.run(command.apply(reason))));
    }

    private void run(String word, Stamp stamp, Supplier<Decision<PersonEvent>> act) {
        if (told().decision(act)) {
            told().done(word, "Stamp " + stamp.number() + ". Nobody signs with it from this moment on.");
            refresh();
        }
    }

    private String csv(List<Stamp> stamps) {
        return Csv.write(List.of("stamp", "badge", "holder", "event", "at", "by", "reason"),
                stamps.stream().flatMap(stamp -> stamp.story().stream().map(event -> List.of(
                        stamp.number(), stamp.holder().value(), name(stamp),
                        StampWords.state(Stamp.state(event)), event.origin().at().wall().toString(),
                        event.origin().by().value(), Stamp.reason(event)))).toList());
    }
}
