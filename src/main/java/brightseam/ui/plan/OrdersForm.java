package brightseam.ui.plan;

import brightseam.kernel.BadgeId;
import brightseam.lineplan.Aim;
import brightseam.lineplan.LineOrders;
import brightseam.lineplan.shell.LinePlan;
import brightseam.people.Person;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What the lead says about the line: what the plan is for and whose hands are there. */
final class OrdersForm extends Section {

    private final Select<Aim> aim = new Select<>();
    private final CheckboxGroup<BadgeId> hands = new CheckboxGroup<>("Hands at the line");
    private LineOrders shown = LineOrders.NONE;

    OrdersForm(Desk desk, Told told, LinePlan plans, People people) {
        addClassName("desk-panel");
        aim.setLabel("What the plan is made for");
        aim.setItems(Aim.values());
        aim.setItemLabelGenerator(PlanWords::aim);
        aim.setWidth("30em");
        aim.setMaxWidth("100%");
        List<Person> fabricators = people.all().stream()
                .filter(person -> person.active() && person.holds(Role.FABRICATOR)).toList();
        hands.setItems(fabricators.stream().map(Person::badge).toList());
        hands.setItemLabelGenerator(badge -> people.find(badge).map(Person::name).orElse(badge.value()));
        hands.setHelperText("Nobody ticked: whoever is signed in counts.");
        add(new H2("What it is made for"), Forms.row(aim), Forms.row(hands),
                Forms.row(Forms.act("Plan like this", () -> say(desk, told, plans))));
        show(shown);
        aim.setValue(shown.aim());
    }

    private void say(Desk desk, Told told, LinePlan plans) {
        boolean aimed = aim.getValue() == shown.aim()
                || told.outcome(() -> plans.aim(desk.origin(), aim.getValue())).isPresent();
        Set<BadgeId> chosen = hands.getValue();
        boolean named = chosen.equals(Set.copyOf(shown.hands()))
                || told.outcome(() -> plans.hands(desk.origin(), chosen)).isPresent();
        if (aimed && named) {
            told.done("Planned anew", PlanWords.aim(aim.getValue()) + ".");
        }
    }

    /** Shows what was said, unless it is as shown already: somebody may be choosing. */
    void show(LineOrders said) {
        if (!said.equals(shown)) {
            shown = said;
            aim.setValue(said.aim());
            hands.setValue(said.hands().stream().collect(Collectors.toSet()));
        }
    }
}
