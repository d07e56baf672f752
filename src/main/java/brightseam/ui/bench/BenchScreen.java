package brightseam.ui.bench;

import brightseam.kernel.Moment;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.ui.parts.GapClock;
import brightseam.ui.parts.StepStrip;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the bench: the card or the invitation to scan, and the holds beside it; only what has changed. */
class BenchScreen extends Div {

    private final BenchServices services;
    private final Bench bench;
    private final Actor actor;
    private final WorkCard card = new WorkCard("", "");
    private final RunningView running;
    private Optional<Shown> shown = Optional.empty();

    /** What the card was drawn from. */
    private record Shown(Optional<BenchCard> card, Optional<Side> side, int running, List<Work.UnderWay> work) {}

    BenchScreen(BenchServices services, Bench bench, Actor actor) {
        this.services = services;
        this.bench = bench;
        this.actor = actor;
        addClassName("bench-screen");
        running = new RunningView(bench, services.clock().speed(), this::show);
        add(card, running);
    }

    void accepted(Verdict.Accepted verdict) {
        card.verdict().accepted(verdict.word(), verdict.reason());
    }

    void refused(Verdict.Refused verdict) {
        card.verdict().refused(verdict.word(), verdict.reason(), verdict.wayOut());
    }

    void clear() {
        card.verdict().clear();
    }

    void show() {
        BenchModel model = bench.model();
        Optional<BenchCard> now = model.card();
        Moment moment = services.clock().now();
        List<Card> cards = services.live().all();
        List<Running> loads = new RunningLoads(services.vocabulary(), ZoneId.systemDefault(), moment)
                .of(cards, actor.badge(), model.ids()).stream()
                .filter(load -> now.isEmpty() || load.by().equals(actor.badge())).toList();
        running.show(loads, now.isEmpty(), moment);
        Shown next = new Shown(now, model.side(), now.isPresent() ? 0 : loads.size(),
                now.isPresent() ? List.of() : Work.underWay(cards, actor.badge(), loads));
        if (!shown.equals(Optional.of(next))) {
            shown = Optional.of(next);
            draw(next);
        }
    }

    private void draw(Shown next) {
        card.removeAll();
        card.actions();
        card.getElement().getClassList().set("idle", next.card().isEmpty());
        if (next.card().isPresent()) {
            add(running);
        }
        if (next.card().isEmpty()) {
            idle(next);
        } else if (next.side().isPresent()) {
            Load load = bench.model().load().orElseThrow();
            new SideFaces(bench, new DoingWriter(services.vocabulary(), ZoneId.systemDefault(), load,
                    services.clock().now())).draw(card, next.side().get());
        } else {
            card(next.card().get());
        }
    }

    private void card(BenchCard shows) {
        card.head(shows.line(), shows.title());
        Div about = new Div(Texts.words("load", shows.load()), Texts.words("where", shows.where()
                + shows.window().map(words -> ". " + words + ".").orElse(".")));
        about.addClassName("about");
        card.add(about);
        shows.hurry().ifPresent(hurry -> card.add(new GapClock(hurry.next(), hurry.gap(), hurry.since(),
                services.clock().now(), services.clock().speed())));
        boolean reads = shows.doing() instanceof Doing.Start start && start.confirm().isPresent();
        if (!shows.instruction().isEmpty() && !reads && !(shows.doing() instanceof Doing.Sign)) {
            card.instruction(shows.instruction());
        }
        boolean begins = shows.doing() instanceof Doing.Start || shows.doing() instanceof Doing.BeginHold;
        if (!shows.also().isEmpty() && begins && !reads) {
            card.add(Texts.lines(shows.also()));
        }
        shows.gloves().ifPresent(words -> card.add(Texts.words("again", words)));
        if (!shows.apart().isEmpty()) {
            card.add(Texts.lines(shows.apart()));
        }
        List<Component> actions = new ArrayList<>(new DoingFaces(bench, new HoldFace(bench.touched(), services.clock()),
                services.vocabulary().safetyNotice()).draw(card, shows.doing()));
        actions.addAll(ways(shows));
        card.actions(actions.toArray(Component[]::new));
        card.add(strip(shows));
    }

    private List<Component> ways(BenchCard shows) {
        BenchModel model = bench.model();
        List<Component> ways = new ArrayList<>();
        shows.hurry().filter(BenchCard.Hurry::passedOver).ifPresent(hurry ->
                ways.add(bench.way("Go on to " + hurry.next() + " first", model::hurryOn)));
        model.closedBin().ifPresent(bin ->
                ways.add(bench.way("Open " + bin, () -> model.side(Optional.of(new Side.OpeningBin())))));
        if (model.isTouchable()) {
            ways.add(bench.way("Something touched it", () -> model.side(Optional.of(new Side.Touching()))));
        }
        if (model.isInCleanGloves()) {
            ways.add(bench.way("My gloves touched something",
                    () -> model.side(Optional.of(new Side.GlovesTouched()))));
        }
        if (model.isInBasket()) {
            ways.add(bench.way("Take pieces out", () -> model.side(Optional.of(Side.TakingOut.NOTHING_SAID))));
            if (!model.isHeld()) {
                ways.add(bench.way("Into another basket",
                        () -> model.side(Optional.of(new Side.Moving(Optional.empty())))));
            }
        }
        if (model.mayEnterLate()) {
            ways.add(bench.way("It was done before", () -> model.side(Optional.of(Side.EnteringLate.NOTHING_SAID))));
        }
        ways.add(bench.way("Report a problem", () -> model.side(Optional.of(
                new Side.Reporting(Optional.empty(), new java.util.TreeSet<>(), false)))));
        if (!model.correctable().isEmpty()) {
            ways.add(bench.way("Correct a reading", () -> model.side(Optional.of(
                    new Side.Correcting(Optional.empty(), Optional.empty(), Optional.empty(), false)))));
        }
        ways.add(bench.way("Put the card away", model::close));
        return ways;
    }

    private static StepStrip strip(BenchCard shows) {
        return new StepStrip(shows.steps().stream().map(mark -> new StepStrip.Stop(mark.number(), mark.title(),
                StepStrip.State.valueOf(mark.standing().name()))).toList());
    }

    /** Nothing is open: what runs, largest what turns next, and below it the person's other work. */
    private void idle(Shown next) {
        if (next.running() > 0) {
            card.head("Touch one to open its card, or scan a traveller or a bin.",
                    next.running() == 1 ? "One load runs" : next.running() + " loads run");
            card.add(running);
        } else {
            card.head("", "Scan a traveller or a bin");
            card.instruction("The card then shows the one thing to do. Nothing else has to be pressed first.");
        }
        if (!next.work().isEmpty()) {
            Div list = new Div();
            list.addClassName("under-way");
            next.work().forEach(work -> list.add(bench.way(work.words(), () -> bench.model().open(work.label()))));
            card.add(new H2("Your work"), list);
        } else if (next.running() == 0) {
            card.add(Texts.words("empty", "Nothing of yours is under way. A released traveller lies with its"
                    + " pieces: scan it to begin."));
        }
    }
}
