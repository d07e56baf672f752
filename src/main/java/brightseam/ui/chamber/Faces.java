package brightseam.ui.chamber;

import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import brightseam.procedure.Hold;
import brightseam.ui.parts.Chart;
import brightseam.ui.parts.Drawn;
import brightseam.ui.parts.HoldClock;
import brightseam.ui.parts.Mark;
import brightseam.ui.parts.RunningHold;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.Optional;

/** Draws what a card is about; answers what of it lives on from second to second. */
final class Faces {

    private final Hands hands;
    private final ShopClock clock;
    private final String notice;

    /** @param notice what goes before every caution */
    Faces(Hands hands, ShopClock clock, String notice) {
        this.hands = hands;
        this.clock = clock;
        this.notice = notice;
    }

    Living draw(WorkCard card, Doing doing) {
        return switch (doing) {
            case Doing.CheckIn list -> checkIn(card, list);
            case Doing.Telling telling -> {
                card.instruction(telling.instruction());
                card.add(Texts.lines(telling.lines()));
                yield Living.STILL;
            }
            case Doing.Purging purging -> purging(card);
            case Doing.Welding welding -> new WeldingFace(hands).draw(card, welding);
            case Doing.AtLock lock -> atLock(card, lock);
            case Doing.ArcReady ready -> new ArcFace(hands, clock).ready(card, ready);
            case Doing.ArcBurns burns -> new ArcFace(hands, clock).burns(card, burns);
            case Doing.ArcOver over -> arcOver(card, over);
            case Doing.Ending ending -> ending(card, ending);
            case Doing.Over over -> over(card, over);
            case Doing.Asking asking -> new AskFace(hands, notice).draw(card, asking.asked());
        };
    }

    private Living checkIn(WorkCard card, Doing.CheckIn list) {
        card.add(Texts.ask(list.ask()));
        UnorderedList needs = new UnorderedList();
        needs.addClassName("needs-list");
        list.needs().forEach(need -> needs.add(need(need)));
        card.add(needs);
        return Living.STILL;
    }

    private ListItem need(Need need) {
        Span title = new Span(need.title());
        title.addClassName("need-title");
        Span detail = new Span(need.detail());
        detail.addClassName("need-detail");
        Div words = new Div(title, detail);
        words.addClassName("need-words");
        Span state = new Span(need.standing().word());
        state.addClassName("need-state");
        ListItem item = new ListItem(new Mark(switch (need.standing()) {
            case IN -> Mark.Kind.SIGNED;
            case MISSING -> Mark.Kind.SCAN;
            case LEFT_OUT -> Mark.Kind.STOPPED;
        }), words, state);
        need.acts().forEach(act -> item.add(Acts.button(act, hands)));
        item.getElement().setAttribute("data-standing", need.standing().name().toLowerCase(java.util.Locale.ROOT));
        return item;
    }

    private Living purging(WorkCard card) {
        BigGauge oxygen = new BigGauge();
        Span forecast = new Span();
        forecast.addClassName("forecast");
        Div level = new Div();
        level.addClassName("levels-off");
        Chart chart = new Chart(new Drawn("<svg xmlns=\"http://www.w3.org/2000/svg\"></svg>", ""));
        Div words = new Div(oxygen, forecast, level);
        words.addClassName("purge-words");
        Div both = new Div(words, chart);
        both.addClassName("purge");
        card.add(both);
        return (now, live) -> {
            oxygen.show(live.oxygen());
            live.purge().ifPresent(purge -> {
                forecast.setText(purge.forecast());
                level.setText(purge.level().orElse(""));
                level.setVisible(purge.level().isPresent());
                chart.show(new Drawn(purge.svg(), purge.words()));
            });
        };
    }

    private Living atLock(WorkCard card, Doing.AtLock lock) {
        Span measured = new Span();
        measured.addClassName("lock-oxygen");
        Div place = new Div(new Chart(LockPicture.of(lock)), Texts.words("lock-state", lock.state()), measured);
        place.addClassName("lock-picture");
        Div words = new Div();
        words.addClassName("lock-words");
        lock.clock().ifPresent(running -> words.add(clock(running)));
        lock.cycles().ifPresent(left -> words.add(count(left)));
        if (!lock.ask().isEmpty()) {
            words.add(Texts.ask(lock.ask()));
        }
        Lines effect = new Lines();
        words.add(Texts.lines(lock.inside()), effect);
        Div both = new Div(place, words);
        both.addClassName("at-lock");
        card.add(both);
        return (now, live) -> {
            effect.show(now instanceof Doing.AtLock same ? same.effect() : List.of());
            measured.setText(live.lock().map(gauge -> gauge.name() + ": " + gauge.quantity() + " " + gauge.word()
                    + (gauge.limit().isEmpty() ? "" : ", " + gauge.limit())).orElse(""));
        };
    }

    private Living ending(WorkCard card, Doing.Ending ending) {
        Lines lines = new Lines();
        card.add(lines);
        ending.cooling().ifPresent(cooling -> card.add(clock(cooling)));
        return (now, live) -> lines.show(now instanceof Doing.Ending same ? same.lines() : List.of());
    }

    private static Component count(int cyclesLeft) {
        Span digits = new Span(String.valueOf(cyclesLeft));
        digits.addClassName("cycle-digits");
        Div count = new Div(digits, new Span(cyclesLeft == 1 ? "cycle left" : "cycles left"));
        count.addClassName("cycles");
        return count;
    }

    private Living arcOver(WorkCard card, Doing.ArcOver over) {
        over.doubt().ifPresent(doubt -> card.add(Texts.words("again", doubt)));
        over.cooling().ifPresent(cooling -> card.add(clock(cooling)));
        card.add(Texts.lines(over.evidence()));
        over.trace().ifPresent(trace -> card.add(new Chart(new Drawn(trace.svg(), trace.words()))));
        return Living.STILL;
    }

    private Living over(WorkCard card, Doing.Over over) {
        UnorderedList list = new UnorderedList();
        list.addClassName("summary");
        over.lines().forEach(line -> {
            Span value = new Span(line.value());
            value.addClassName("summary-value");
            list.add(new ListItem(new Span(line.name()), value));
        });
        card.add(list);
        return Living.STILL;
    }

    private HoldClock clock(Doing.Running running) {
        Moment now = clock.now();
        return new HoldClock(new RunningHold(running.label(), running.since(), now,
                new Hold(running.length(), Optional.empty()), clock.speed(), running.atZero(), ""));
    }
}
