package brightseam.ui.line;

import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.LiveTravellers;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Left;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.Pulse;
import brightseam.ui.parts.Changes;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Duration;
import java.util.List;
import java.util.Set;

/** The line: every tank and dryer in the order of the route, what is in it, since when and until when. */
@Route("line")
@PageTitle("Line")
@RolesAllowed({"LEAD", "INSPECTOR"})
@StyleSheet("context://frontend/line.css")
class LineView extends DeskPage {

    /** Looked at anew this often, in shop time, so that words turn; the countdowns themselves run in the page. */
    private static final Duration LOOK = Duration.ofSeconds(10);
    private static final Set<String> SHOWN = Set.of("traveller", "station", "bath", "bin");

    private final LiveTravellers live;
    private final Stations stations;
    private final Baths baths;
    private final LineModel model;
    private final DeskTable<PlaceRow> places = new DeskTable<PlaceRow>(
            "Every tank and dryer, in the order of the route",
            "No tank is registered. An administrator or lead registers stations in the shop's registers.")
            .cell("Place", LineView::place).cell("Now", this::state).cell("In it", this::inside)
            .cell("Bath", this::bath);
    private final DeskTable<BetweenRow> between = new DeskTable<BetweenRow>("Loads between two steps",
            "Nothing is on its way from one step to the next against the clock.")
            .text("Load", BetweenRow::load).cell("Travellers", row -> travellers(row.travellers()))
            .text("Has to begin", BetweenRow::next).cell("Until", row -> until("latest", row.latest()));

    LineView(Desk desk, LiveTravellers live, Stations stations, Baths baths, Vocabulary vocabulary,
            ProcedureLibrary procedures, Changes changes, Pulse pulse) {
        super(desk, "Line");
        this.live = live;
        this.stations = stations;
        this.baths = baths;
        this.model = new LineModel(vocabulary, procedures.current());
        show(Forms.panel("Tanks and dryers", places), Forms.panel("Between them", between));
        refresh();
        changes.follow(this, streams -> {
            live.catchUp(streams);
            if (streams.stream().anyMatch(stream -> SHOWN.contains(stream.family()))) {
                refresh();
            }
        });
        pulse.every(this, Duration.ofMillis(Math.clamp(
                (long) (LOOK.toMillis() / desk.speed()), 2_000, LOOK.toMillis())), this::refresh);
    }

    private void refresh() {
        List<Card> cards = live.all();
        List<PlaceRow> rows = model.places(stations.all(), cards, desk().now());
        long over = rows.stream().filter(PlaceRow::alarms).count();
        long busy = rows.stream().filter(row -> !row.inside().isEmpty()).count();
        head("Line", (over == 0 ? "" : "OVERRUN in " + Words.count(over, "place", "places") + ". ")
                + busy + " of " + rows.size() + " tanks and dryers are taken.");
        places.show(rows);
        between.show(model.between(cards));
    }

    private static Component place(PlaceRow row) {
        Div title = new Div(new Span(row.title()));
        title.addClassName("line-title");
        Div place = new Div(new Span(row.station().value()), title);
        place.getElement().setAttribute("data-station", row.station().value());
        return place;
    }

    private Component state(PlaceRow row) {
        Span word = new Span(row.state());
        word.addClassName(row.alarms() ? "line-overrun" : row.inside().isEmpty() ? "line-free" : "line-taken");
        Div state = new Div(word);
        row.outOfUse().ifPresent(why -> state.add(new Div(new Span(why))));
        return state;
    }

    private Component inside(PlaceRow row) {
        Div loads = new Div();
        loads.addClassName("line-loads");
        row.inside().forEach(one -> loads.add(load(one, row.inside().size() > 1)));
        return loads;
    }

    /** @param several whether each load says how it stands, because the place's own word is the worst one's */
    private Component load(PlaceRow.Inside one, boolean several) {
        Span what = new Span((several ? one.standing().words() + ": " : "") + one.load() + " · " + one.step() + " · "
                + Words.count(one.pieces(), "piece", "pieces"));
        what.addClassName("line-load");
        Div load = new Div(what, travellers(one.travellers()),
                new Paragraph("since " + clock(one.since())));
        one.earliest().ifPresent(at -> load.add(desk().now().isBefore(at) ? until("earliest", at)
                : new Paragraph("earliest " + clock(at))));
        one.latest().ifPresent(at -> load.add(until("latest", at)));
        return load;
    }

    private static Div travellers(List<TravellerId> ids) {
        Div links = new Div();
        links.addClassName("line-travellers");
        ids.forEach(id -> links.add(Links.to("board/traveller/" + id, id.value())));
        return links;
    }

    private Paragraph until(String which, Moment at) {
        return new Paragraph(new Span(which + " " + clock(at) + ", "),
                new Left(at.since(desk().now()), desk().speed()));
    }

    private String clock(Moment at) {
        return Words.clockTime(at.wall(), desk().now().wall(), desk().zone());
    }

    /** What stands against the bath, in a word; its page says the rest. */
    private Component bath(PlaceRow row) {
        return baths.find(row.station()).map(found -> found.state()).<Component>map(bath -> {
            String words = bath.objections(desk().now()).stream().map(desk().wording()::explain)
                    .map(told -> told.word()).distinct().findFirst().orElse("fit");
            return Links.to("baths/" + row.station(), words);
        }).orElseGet(() -> new Span("none"));
    }
}
