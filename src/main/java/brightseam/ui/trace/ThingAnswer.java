package brightseam.ui.trace;

import brightseam.kernel.TravellerId;
import brightseam.report.Phrases;
import brightseam.trace.Reach;
import brightseam.trace.Reached;
import brightseam.trace.Touch;
import brightseam.trace.TraceQuestion;
import brightseam.trace.shell.Traces;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Chart;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a thing touched: all of it counted, a page of it as picture and list, the whole as CSV. */
final class ThingAnswer extends Div {

    /** As many rows as a tablet shows without getting lost, and a print takes on a page. */
    private static final int PAGE = 25;
    private static final int CONTACTS_SHOWN = 3;

    private final Desk desk;
    private final Traces traces;
    private final Div counted = new Div();
    private final Div page = new Div();
    private Reach reach;
    private int first;

    ThingAnswer(Desk desk, Traces traces, TraceQuestion question) {
        this.desk = desk;
        this.traces = traces;
        addClassName("trace-answer");
        add(counted, page);
        ask(question);
    }

    /** The whole answer. */
    Reach reach() {
        return reach;
    }

    /** Asks again and shows the same page of what comes. */
    void again() {
        ask(reach.question());
    }

    private void ask(TraceQuestion question) {
        reach = traces.reach(question);
        first = Math.min(first, Math.max(0, reach.travellers().size() - 1) / PAGE * PAGE);
        show();
    }

    private void show() {
        counted.removeAll();
        Paragraph sum = new Paragraph(TraceWords.counts(reach));
        sum.addClassName("trace-counts");
        counted.add(Forms.panel("What it touched", sum, new Paragraph("As the records stood "
                + Words.stamp(desk.now().wall(), desk.zone()) + "."), Forms.row(ways())));
        page.removeAll();
        if (!reach.travellers().isEmpty()) {
            page.add(page());
        }
    }

    private Component[] ways() {
        Component csv = Files.csv("Save every contact as CSV", "trace.csv", this::everyContact);
        return new Component[] {csv, Forms.button("Ask again", this::again)};
    }

    private String everyContact() {
        return TraceCsv.reach(reach, traces.touches(
                reach.question(), reach.travellers().stream().map(one -> one.now().traveller()).toList()));
    }

    private Component page() {
        List<Reached> shown = reach.travellers().subList(first, Math.min(reach.travellers().size(), first + PAGE));
        List<Touch> touches = traces.touches(reach.question(),
                shown.stream().map(one -> one.now().traveller()).toList());
        Map<TravellerId, List<Touch>> byTraveller = touches.stream().collect(Collectors.groupingBy(Touch::traveller));
        DeskTable<Reached> list = new DeskTable<Reached>("Travellers that it touched, last contact first", "")
                .cell("Traveller", one -> traveller(one))
                .text("Pieces", one -> Phrases.pieces(byTraveller.get(one.now().traveller()).stream()
                        .flatMap(touch -> touch.pieces().stream()).toList()))
                .cell("When", one -> contacts(byTraveller.get(one.now().traveller())))
                .cell("Kit", one -> Links.to("board/kit/" + one.now().kit(), one.now().kit().value()))
                .text("Where now", one -> TraceWords.where(one.now())).file(this::everyContact).show(shown);
        String thing = TraceWords.thing(reach.question());
        Div both = new Div(Forms.panel("When", pager(), new Chart(
                        Pictures.ofThing(thing, shown, touches, desk.now().wall(), desk.zone()))),
                Forms.panel("Which pieces, when, where now", list, pager()));
        both.addClassName("trace-page");
        return both;
    }

    private static Component traveller(Reached one) {
        Div cell = new Div(Links.to(TraceAddress.of(one.now().traveller()), one.now().traveller().value()),
                new Paragraph(one.now().part().description()));
        cell.getElement().setAttribute("data-traveller", one.now().traveller().value());
        return cell;
    }

    private Component contacts(List<Touch> touches) {
        Div cell = new Div();
        touches.stream().limit(CONTACTS_SHOWN).forEach(touch -> cell.add(new Paragraph(
                TraceWords.when(touch.from(), touch.until(), desk.zone()) + ", " + TraceWords.step(touch)
                        + (touch.recordedAs().equals(touch.traveller()) ? "" : ", as " + touch.recordedAs()))));
        if (touches.size() > CONTACTS_SHOWN) {
            cell.add(new Paragraph("and " + (touches.size() - CONTACTS_SHOWN) + " more; all are in the CSV"));
        }
        return cell;
    }

    private Component pager() {
        int all = reach.travellers().size();
        int last = Math.min(all, first + PAGE);
        Div pager = Forms.row(new Span("Travellers " + (first + 1) + " to " + last + " of " + all));
        pager.addClassName("trace-pager");
        if (all > PAGE) {
            pager.add(turn("Later contacts", first - PAGE), turn("Earlier contacts", first + PAGE));
        }
        return pager;
    }

    private NativeButton turn(String words, int to) {
        NativeButton button = Forms.button(words, () -> {
            first = to;
            show();
        });
        button.setEnabled(to >= 0 && to < reach.travellers().size());
        return button;
    }
}
