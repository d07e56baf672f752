package brightseam.ui.chamber;

import brightseam.ui.parts.Action;
import brightseam.ui.parts.Mark;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;

/** Draws whether the chamber is fit, why not, and its joints on the picture and as a list to touch. */
final class WeldingFace {

    private final Hands hands;

    WeldingFace(Hands hands) {
        this.hands = hands;
    }

    Living draw(WorkCard card, Doing.Welding welding) {
        Lines reasons = new Lines();
        Div why = new Div(reasons);
        why.addClassName("why-not");
        why.setVisible(!welding.fit());
        card.add(why);
        Div joints = new Div();
        joints.addClassName("joint-list");
        welding.joints().forEach(joint -> joints.add(line(joint)));
        if (welding.joints().isEmpty()) {
            joints.add(Texts.words("empty", "This kit has no weld map yet. The lead draws it on the kit's page; until"
                    + " then no joint can be begun."));
        }
        Div both = new Div();
        both.addClassName("map-and-list");
        welding.map().ifPresent(map -> both.add(picture(map)));
        both.add(joints);
        card.add(both);
        return (now, live) -> reasons.show(now instanceof Doing.Welding same ? same.whyNot() : java.util.List.of());
    }

    private Component line(JointLine joint) {
        Action touch = Action.other("", pressed -> hands.goes(joint.path()));
        touch.addClassName("joint");
        Span number = new Span(joint.number());
        number.addClassName("joint-number");
        Span words = new Span(joint.words());
        words.addClassName("joint-words");
        Span state = new Span(joint.state());
        state.addClassName("joint-state");
        touch.add(new Mark(joint.mark()), number, words, state);
        return touch;
    }

    static Component picture(MapPicture map) {
        Image picture = new Image(map.address(), "Weld map");
        Div frame = new Div(picture);
        frame.addClassName("map-picture");
        map.spots().forEach(spot -> {
            Span mark = new Span(new Mark(spot.mark()), new Span(spot.number()));
            mark.addClassName("map-mark");
            mark.getStyle().set("left", tenths(spot.xThousandths())).set("top", tenths(spot.yThousandths()));
            mark.getElement().setAttribute("aria-hidden", "true");
            frame.add(mark);
        });
        return frame;
    }

    private static String tenths(int thousandths) {
        return String.format(Locale.ROOT, "%.1f%%", thousandths / 10.0);
    }
}
