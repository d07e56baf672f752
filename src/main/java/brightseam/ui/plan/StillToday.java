package brightseam.ui.plan;

import brightseam.lineplan.Aim;
import brightseam.lineplan.PlanStanding;
import brightseam.lineplan.shell.LinePlan;
import brightseam.planner.Answer;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.function.Function;

/** Answers what can still be ready today, without changing what the line is planned for. */
final class StillToday extends Section {

    private final Div answer = new Div();
    private final Function<PlanStanding, PlanWords> words;

    StillToday(LinePlan plans, Function<PlanStanding, PlanWords> words) {
        this.words = words;
        addClassName("desk-panel");
        add(new H2("What can still be ready today?"), Forms.row(Forms.button("Work it out", () ->
                told(plans.whatIf(Aim.STILL_TODAY)))), answer);
    }

    private void told(PlanStanding standing) {
        answer.removeAll();
        if (standing.situation().loads().isEmpty()) {
            answer.add(Forms.note("Nothing is on the line."));
            return;
        }
        switch (standing.answer()) {
            case Answer.Planned planned -> answer.add(list(words.apply(standing).ready()));
            case Answer.Impossible none -> answer.add(new Paragraph(PlanWords.about(none.conflict())),
                    list(words.apply(standing).conflict(none.conflict())));
            case Answer.Undecided undecided -> answer.add(Forms.note("Not found in two seconds. Ask again."));
        }
    }

    private static UnorderedList list(List<String> lines) {
        UnorderedList list = new UnorderedList();
        list.addClassName("desk-list");
        lines.forEach(line -> list.add(new ListItem(line)));
        return list;
    }
}
