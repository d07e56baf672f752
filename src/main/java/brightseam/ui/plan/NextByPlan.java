package brightseam.ui.plan;

import brightseam.kernel.BadgeId;
import brightseam.kernel.shell.ShopClock;
import brightseam.lineplan.Move;
import brightseam.lineplan.shell.LinePlan;
import brightseam.ui.desk.Left;
import brightseam.words.Words;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Aside;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.time.ZoneId;
import java.util.List;

/** On a bench: what the plan of the line has this person do next, with the time that is left; nothing without one. */
public final class NextByPlan extends Aside {

    private static final int MOVES_MAX = 2;

    private final LinePlan plans;
    private final ShopClock clock;
    private final BadgeId person;
    private List<Move> shown = List.of();

    /** For {@code person}. */
    public NextByPlan(LinePlan plans, ShopClock clock, BadgeId person) {
        this.plans = plans;
        this.clock = clock;
        this.person = person;
        addClassName("by-plan");
        getElement().setAttribute("aria-label", "Next by the plan");
        setVisible(false);
        addAttachListener(attached -> {
            UI page = attached.getUI();
            Runnable following = plans.follow(() -> page.access(this::refresh));
            addDetachListener(detached -> {
                detached.unregisterListener();
                following.run();
            });
            refresh();
        });
    }

    /** A plan that says the same is not drawn again, so that nothing flickers under a hand. */
    private void refresh() {
        List<Move> moves = plans.current().stream().flatMap(standing -> standing.moves().stream())
                .filter(move -> move.person().equals(person)).limit(MOVES_MAX).toList();
        if (moves.equals(shown)) {
            return;
        }
        shown = moves;
        removeAll();
        setVisible(!moves.isEmpty());
        moves.forEach(move -> add(line(move)));
    }

    private Paragraph line(Move move) {
        Span when = new Span(Words.clockTime(move.takenAt().wall(), clock.now().wall(), ZoneId.systemDefault()));
        when.addClassName("by-plan-when");
        return new Paragraph(when, new Span(" " + PlanWords.move(move) + ", "),
                new Left(move.takenAt().since(clock.now()), clock.speed()));
    }
}
