package brightseam.ui.trace;

import brightseam.kernel.TravellerId;
import brightseam.people.shell.People;
import brightseam.report.Phrases;
import brightseam.trace.Beside;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.trace.Whereabouts;
import brightseam.trace.shell.Traces;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Chart;
import brightseam.words.Wording;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Optional;

/** What touched the pieces of a traveller, or one of them, and what was beside them. */
final class PieceAnswer extends Div {

    private static final int BESIDE_SHOWN = 100;

    private final Desk desk;
    private final Traces traces;
    private final People people;
    private final Whereabouts now;
    private final List<Touch> touches;
    private final String pieces;

    PieceAnswer(Desk desk, Traces traces, People people, Whereabouts now, Optional<Integer> piece) {
        this.desk = desk;
        this.traces = traces;
        this.people = people;
        this.now = now;
        this.touches = piece.map(one -> traces.touches(now.traveller(), one))
                .orElseGet(() -> traces.touches(now.traveller()));
        this.pieces = piece.map(one -> "piece " + one).orElse("the pieces") + " of " + now.traveller();
        addClassName("trace-answer");
        add(standing());
        if (!touches.isEmpty()) {
            add(Forms.panel("When", new Chart(
                            Pictures.ofPieces(pieces, touches, desk.now().wall(), desk.zone()))),
                    Forms.panel("What touched " + pieces + ", in order of time", list()),
                    Forms.panel("What was beside them", beside()));
        }
    }

    private Component standing() {
        Paragraph where = new Paragraph(TraceWords.capital(TraceWords.where(now)) + ".");
        where.addClassName("trace-counts");
        Div all = new Div(where);
        now.parent().ifPresent(parent -> all.add(new Paragraph(new Span("Set apart from "),
                Links.to(TraceAddress.of(parent), parent.value()),
                new Span("; what touched them there is in this answer."))));
        for (Whereabouts child : traces.setApartFrom(now.traveller())) {
            all.add(new Paragraph(new Span(TraceWords.capital(Phrases.pieces(child.pieces())) + " went on as "),
                    Links.to(TraceAddress.of(child.traveller()), child.traveller().value())));
        }
        if (touches.isEmpty()) {
            all.add(Forms.note("No such piece is, or ended, under this label."));
        }
        Div single = Forms.row(new Span("One piece alone:"));
        single.addClassName("trace-pager");
        now.pieces().forEach(piece -> single.add(
                Links.to(TraceAddress.of(now.traveller(), piece), String.valueOf(piece))));
        all.add(single, Forms.row(Links.to("board/traveller/" + now.traveller(), "Where it stands"),
                Files.csv("Save this list as CSV", now.traveller() + "-contacts.csv",
                        () -> TraceCsv.touches(touches))));
        return Forms.panel("Now", all);
    }

    private Component list() {
        return new DeskTable<Touch>("Contacts, the first at the top", "").file(() -> TraceCsv.touches(touches))
                .cell("What", this::thing)
                .text("When", touch -> TraceWords.when(touch.from(), touch.until(), desk.zone()))
                .text("At", touch -> TraceWords.step(touch)
                        + (touch.recordedAs().equals(touch.traveller()) ? "" : ", as " + touch.recordedAs()))
                .text("Pieces", touch -> Phrases.pieces(touch.pieces())).show(touches);
    }

    private Component thing(Touch touch) {
        String name = touch.thing().kind() != ThingKind.PERSON ? ""
                : people.all().stream().filter(person -> person.badge().value().equals(touch.thing().label()))
                        .findFirst().map(person -> ", " + person.name()).orElse("");
        return new Div(Links.to(TraceAddress.of(touch.thing()), TraceWords.thing(touch.thing())),
                new Span(name + (touch.type().isEmpty() ? "" : ", " + Wording.words(touch.type()))));
    }

    private Component beside() {
        List<Beside> all = traces.beside(now.traveller()).stream()
                .filter(beside -> touches.contains(beside.own())).toList();
        DeskTable<Beside> table = new DeskTable<Beside>(all.size() <= BESIDE_SHOWN
                ? "Others in the same bin, bath or gloves in the same time, latest first"
                : "The latest " + BESIDE_SHOWN + " of " + all.size() + " in the same bin, bath or gloves",
                "Nothing else was in the same bin, bath or gloves in the same time.")
                .whole(() -> all).cell("Traveller", one -> traveller(one.now().traveller()))
                .cell("Shared", one -> Links.to(TraceAddress.of(one.own().thing()),
                        TraceWords.thing(one.own().thing())))
                .text("When", one -> TraceWords.when(one.from(), one.until(), desk.zone()))
                .text("Where now", one -> TraceWords.where(one.now()));
        return table.show(all.stream().limit(BESIDE_SHOWN).toList());
    }

    private static Component traveller(TravellerId id) {
        return Links.to(TraceAddress.of(id), id.value());
    }
}
