package brightseam.ui.chamber;

import brightseam.kernel.shell.ShopClock;
import brightseam.ui.parts.ArcSwitch;
import brightseam.ui.parts.Mark;
import brightseam.ui.parts.RunClock;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Draws a joint before its arc and while it burns: what has to hold above, and below it nothing but the switch. */
final class ArcFace {

    private final Hands hands;
    private final ShopClock clock;

    ArcFace(Hands hands, ShopClock clock) {
        this.hands = hands;
        this.clock = clock;
    }

    Living ready(WorkCard card, Doing.ArcReady ready) {
        card.getElement().getClassList().add("arc-card");
        UnorderedList conditions = new UnorderedList();
        conditions.addClassName("conditions");
        card.add(conditions);
        if (!ready.scan().isEmpty()) {
            card.add(Texts.ask(ready.scan()));
        }
        Optional<ArcSwitch> press = Optional.of(arcSwitch()).filter(any -> ready.armed());
        press.ifPresent(made -> {
            made.ready(ready.usable(), ready.under(), clock.now());
            card.add(made);
        });
        return new Living() {
            private List<Live.Condition> shown = List.of();

            @Override
            public void tell(Doing now, Live live) {
                if (!shown.equals(live.conditions())) {
                    shown = live.conditions();
                    conditions.removeAll();
                    shown.forEach(one -> conditions.add(condition(one)));
                }
                if (now instanceof Doing.ArcReady same) {
                    press.ifPresent(made -> made.under(same.under()));
                }
            }
        };
    }

    Living burns(WorkCard card, Doing.ArcBurns burns) {
        card.getElement().getClassList().add("arc-card");
        BigGauge oxygen = new BigGauge();
        Div trouble = new Div();
        trouble.addClassName("arc-trouble");
        trouble.getElement().setAttribute("role", "alert");
        Div digits = new Div(new RunClock("Arc " + burns.run() + " burns", burns.since(), clock.now(), clock.speed()),
                oxygen);
        digits.addClassName("arc-digits");
        ArcSwitch press = arcSwitch();
        press.running(burns.run(), "Touch, or press the foot switch, the moment it is out", clock.now());
        card.add(trouble, digits, press);
        return (now, live) -> {
            oxygen.show(live.oxygen());
            String words = switch (live.oxygen().state()) {
                case IN_ORDER, PLAIN -> "";
                case ABOVE, NOT_YET -> "Oxygen above the limit: end the arc. The seconds are in the record.";
                case UNKNOWN -> "No oxygen reading: end the arc. Without readings the joint is not proven.";
            };
            trouble.setText(words);
            trouble.setVisible(!words.isEmpty());
        };
    }

    private ArcSwitch arcSwitch() {
        ArcSwitch press = new ArcSwitch(clock.speed());
        press.addPressedListener(pressed -> hands.arc(pressed.isStart(), pressed.arc(), pressed.atElapsedMillis()));
        return press;
    }

    private static ListItem condition(Live.Condition condition) {
        Span words = new Span(condition.words());
        words.addClassName("condition-words");
        Span value = new Span(condition.value());
        value.addClassName("condition-value");
        ListItem item = new ListItem(new Mark(switch (condition.standing()) {
            case HOLDS -> Mark.Kind.SIGNED;
            case BROKEN -> Mark.Kind.REFUSED;
            case ASKED -> Mark.Kind.NOW;
        }), words, value);
        item.getElement().setAttribute("data-standing", condition.standing().name().toLowerCase(Locale.ROOT));
        return item;
    }
}
