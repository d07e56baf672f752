package brightseam.ui.plan;

import brightseam.kernel.BadgeId;
import brightseam.lineplan.Aim;
import brightseam.lineplan.LineOrders;
import brightseam.lineplan.Move;
import brightseam.lineplan.PlanStanding;
import brightseam.lineplan.shell.LinePlan;
import brightseam.people.Person;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.planner.Answer;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Left;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Pulse;
import brightseam.ui.parts.Chart;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The plan of the cleaning line: what is next, the picture, what it is made for, what can still be ready today. */
@Route("plan")
@PageTitle("Plan of the line")
@RolesAllowed({"LEAD", "INSPECTOR", "FABRICATOR"})
class PlanView extends DeskPage {

    private static final int MOVES_SHOWN_MAX = 8;
    private static final Duration LOOK = Duration.ofSeconds(15);

    /** How much of the plan is drawn. */
    private enum Span {
        HALF_HOUR("The next 30 min", Duration.ofMinutes(30)),
        TWO_HOURS("The next 2 h", Duration.ofHours(2)),
        WHOLE("All of it", Duration.ofDays(3));

        private final String words;
        private final Duration length;

        Span(String words, Duration length) {
            this.words = words;
            this.length = length;
        }
    }

    private final LinePlan plans;
    private final People people;
    private final Section next = Forms.panel("Next");
    private final Section picture = Forms.panel("Picture");
    private final Section outside = Forms.panel("Not in the plan");
    private final Div nextBody = new Div();
    private final Div pictureBody = new Div();
    private final Div outsideBody = new Div();
    private final Select<Span> span = new Select<>();
    private final OrdersForm orders;

    PlanView(Desk desk, LinePlan plans, People people, Pulse pulse) {
        super(desk, "Plan of the line");
        this.plans = plans;
        this.people = people;
        this.orders = new OrdersForm(desk, told(), plans, people);
        span.setLabel("How much is drawn");
        span.setItems(Span.values());
        span.setItemLabelGenerator(chosen -> chosen.words);
        span.setValue(Span.TWO_HOURS);
        span.addValueChangeListener(chosen -> refresh());
        next.add(nextBody);
        picture.add(Forms.row(span), pictureBody);
        outside.add(outsideBody);
        List<Component> panels = new ArrayList<>(List.of(next, picture));
        if (desk.holds(Role.LEAD)) {
            panels.add(orders);
        }
        panels.add(new StillToday(plans, this::words));
        panels.add(outside);
        show(panels.toArray(Component[]::new));
        addAttachListener(attached -> {
            UI page = attached.getUI();
            Runnable following = plans.follow(() -> page.access(this::refresh));
            addDetachListener(detached -> {
                detached.unregisterListener();
                following.run();
            });
            refresh();
        });
        pulse.every(this, LOOK, this::refresh);
    }

    private PlanWords words(PlanStanding standing) {
        return new PlanWords(standing, this::name, desk().zone(), desk().now().wall());
    }

    private String name(BadgeId badge) {
        return people.find(badge).map(Person::name).orElse(badge.value());
    }

    private void refresh() {
        LineOrders said = plans.orders();
        orders.show(said);
        Optional<PlanStanding> standing = plans.current();
        nextBody.removeAll();
        pictureBody.removeAll();
        outsideBody.removeAll();
        if (standing.isEmpty()) {
            head("Plan of the line", plans.isPlanning() ? "A plan is being made." : "Nothing is on the line.");
            nextBody.add(empty(plans.isPlanning() ? "A moment: the first plan takes a second or two."
                    : "Nothing stands at the cleaning line. A traveller comes into the plan when its step before the"
                            + " first soak is signed."));
            pictureBody.add(Forms.note("No plan to draw."));
            outsideBody.add(Forms.note("See the board for every traveller."));
            return;
        }
        PlanWords words = words(standing.get());
        head("Plan of the line", PlanWords.aim(standing.get().situation().aim()) + ". " + words.standing());
        switch (standing.get().answer()) {
            case Answer.Planned planned -> planned(standing.get(), words);
            case Answer.Impossible impossible -> impossible(impossible, words);
            case Answer.Undecided undecided -> nextBody.add(empty("Go by the board and the holds until there is one."));
        }
        if (standing.get().instead().isPresent()) {
            nextBody.add(Forms.note("Meanwhile, sessions left aside, everything as soon as it can be:"));
            planned(standing.get(), words);
        }
        if (standing.get().plan().isEmpty()) {
            pictureBody.add(Forms.note("No plan to draw."));
        }
        outside(standing.get());
    }

    private void planned(PlanStanding standing, PlanWords words) {
        OrderedList list = new OrderedList();
        list.addClassName("plan-moves");
        standing.moves().stream().limit(MOVES_SHOWN_MAX).forEach(move -> list.add(move(move, words)));
        nextBody.add(list);
        pictureBody.add(new Chart(new PlanPicture(standing, this::name, desk().zone())
                .draw(desk().now().wall(), span.getValue().length)));
    }

    private ListItem move(Move move, PlanWords words) {
        Paragraph what = new Paragraph(new com.vaadin.flow.component.html.Span(PlanWords.move(move) + ", "),
                new Left(move.takenAt().since(desk().now()), desk().speed()));
        what.addClassName("plan-move");
        return new ListItem(what, new Paragraph(words.times(move) + "."));
    }

    private void impossible(Answer.Impossible impossible, PlanWords words) {
        Div none = new Div();
        none.addClassName("plan-none");
        none.add(new Paragraph(PlanWords.about(impossible.conflict())));
        UnorderedList list = new UnorderedList();
        words.conflict(impossible.conflict()).forEach(line -> list.add(new ListItem(line)));
        none.add(list, new Paragraph("What is in a bath comes out by its own clock all the same."));
        nextBody.add(none);
    }

    private void outside(PlanStanding standing) {
        UnorderedList list = new UnorderedList();
        list.addClassName("desk-list");
        standing.situation().upstream().forEach(id -> list.add(new ListItem(
                Links.to("board/traveller/" + id, id.value()), new com.vaadin.flow.component.html.Span(
                        " has not come to the line yet"))));
        standing.situation().withoutStation().forEach(label -> list.add(new ListItem(
                label + ": no station of a class that it needs is in the line's layout")));
        outsideBody.add(list.getChildren().findAny().isPresent() ? list
                : Forms.note("Everything that has been released and has not been bagged is in it."));
    }

    private static Paragraph empty(String words) {
        Paragraph empty = new Paragraph(words);
        empty.addClassName("desk-empty");
        return empty;
    }
}
