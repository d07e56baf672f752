package brightseam.ui.stamp;

import brightseam.report.Phrases;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.LiveTravellers;
import brightseam.traveller.shell.Travellers;
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

/** What waits for an inspector, most urgent first, and the finished travellers with their prints. */
@Route("stamp")
@PageTitle("Stamp desk")
@RolesAllowed("INSPECTOR")
@StyleSheet("context://frontend/stamp.css")
class StampDeskView extends DeskPage {

    private static final int FINISHED_SHOWN = 50;
    private static final Duration LOOK = Duration.ofSeconds(15);

    private final LiveTravellers live;
    private final Travellers travellers;
    private final DeskTable<Waiting> waiting = new DeskTable<>("What waits for you, what runs out first at the top",
            "Nothing waits for a stamp or a disposition. This page shows by itself when something does.");
    private final DeskTable<Card> finished = new DeskTable<>("Finished travellers, latest first",
            "No traveller is finished yet. Each appears here when its last step is stamped.");

    StampDeskView(Desk desk, LiveTravellers live, Travellers travellers, Changes changes, Pulse pulse) {
        super(desk, "Stamp desk");
        this.live = live;
        this.travellers = travellers;
        waiting.cell("Traveller", StampDeskView::label).cell("Asked for", StampDeskView::asked)
                .cell("Clean window", this::window)
                .text("Waits since", row -> Words.clockTime(row.since().wall(), desk.now().wall(), desk.zone()));
        finished.whole(() -> travellers.ended(Integer.MAX_VALUE))
                .cell("Traveller", card -> Links.to("stamp/" + card.id(), card.id().value()))
                .text("Part", card -> card.traveller().part().description())
                .text("Heat", card -> card.traveller().heat().value())
                .text("Is", card -> Phrases.phase(card.traveller().phase()))
                .act("Print", card -> RecordLinks.pdf(card.id()));
        show(Forms.panel("Waits for an inspector", waiting), Forms.panel("Finished", finished));
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> stream.family().equals("traveller"))) {
                refresh();
            }
        });
        pulse.every(this, LOOK, this::refresh);
        refresh();
    }

    private void refresh() {
        List<Waiting> rows = Waiting.among(live.all(), desk().now());
        head("Stamp desk", rows.isEmpty() ? "" : Words.count(rows.size(), "traveller waits.", "travellers wait."));
        waiting.show(rows);
        finished.show(travellers.ended(FINISHED_SHOWN));
    }

    private static Component label(Waiting row) {
        Div cell = new Div(Links.to("stamp/" + row.id(), row.id().value()), new Paragraph(row.part()));
        cell.addClassName("stamp-label");
        return cell;
    }

    private static Component asked(Waiting row) {
        Paragraph what = new Paragraph(row.what());
        what.addClassName("stamp-what");
        return new Div(what, new Paragraph(row.why()));
    }

    private Component window(Waiting row) {
        return row.windowLeft().<Component>map(left -> new Div(new Span("closes "), new Left(left, desk().speed())))
                .orElseGet(() -> new Span("not open"));
    }
}
