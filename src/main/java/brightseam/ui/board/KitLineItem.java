package brightseam.ui.board;

import brightseam.ui.desk.Left;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Mark;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;

/** One kit on the board: whether it can go in, and what holds it up. */
final class KitLineItem extends ListItem {

    private static final int SHOWN_MAX = 4;

    KitLineItem(KitStanding kit, double speed) {
        addClassName("board-kit");
        getElement().setAttribute("data-kit", kit.id().value());
        Div head = new Div(Links.to("board/kit/" + kit.id(), kit.id() + " " + kit.title()), verdict(kit));
        head.addClassName("kit-head");
        add(head);
        kit.session().ifPresent(session ->
                add(new Paragraph(new Span("Session due "), new Left(session.left(), speed))));
        lines("SUSPECT:", kit.suspects());
        lines("Held up by", kit.holdUps());
        lines("Ready, but not for the session", kit.closing());
        if (!kit.lacking().isEmpty()) {
            add(new Paragraph("Lacking: " + String.join("; ", kit.lacking()) + "."));
        }
    }

    private static Span verdict(KitStanding kit) {
        Mark.Kind mark = switch (kit.verdict()) {
            case CAN_GO_IN, IS_IN -> Mark.Kind.SIGNED;
            case CANNOT_GO_IN_YET, NOTHING_RELEASED -> Mark.Kind.TO_COME;
        };
        Span verdict = new Span(new Mark(mark), new Span(kit.verdict().words()));
        verdict.addClassName("row-verdict");
        return verdict;
    }

    private void lines(String words, List<KitStanding.HoldUp> holdUps) {
        if (holdUps.isEmpty()) {
            return;
        }
        Paragraph line = new Paragraph(new Span(words + " "));
        for (int i = 0; i < Math.min(SHOWN_MAX, holdUps.size()); i++) {
            KitStanding.HoldUp holdUp = holdUps.get(i);
            line.add(new Span(i == 0 ? "" : " · "), Links.to("board/traveller/" + holdUp.traveller(),
                    holdUp.traveller().value()), new Span(" (" + holdUp.why() + ")"));
        }
        line.add(new Span(holdUps.size() > SHOWN_MAX ? " and " + (holdUps.size() - SHOWN_MAX) + " more." : "."));
        add(line);
    }
}
