package brightseam.demo;

import brightseam.kernel.shell.DemoClock;
import brightseam.scan.Label;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Hurries the demo's clock, and lists its labels. Registered in the demo shop only. */
@Route(value = DemoView.PATH, registerAtStartup = false)
@PageTitle("Demo")
@PermitAll
final class DemoView extends DeskPage {

    static final String PATH = "demo";

    private final DemoClock clock;

    DemoView(Desk desk, DemoClock clock, DemoLabels labels, TroublePanel trouble) {
        super(desk, "Demo");
        this.clock = clock;
        head("Demo", "Everything in this shop is invented, and its clock can be hurried.");
        List<Component> panels = new ArrayList<>(List.of(clock(), trouble.panel(), printing()));
        labels.groups().forEach((heading, group) -> panels.add(Forms.panel(heading, table(heading, group))));
        show(panels.toArray(Component[]::new));
    }

    private Component clock() {
        return Forms.panel("Clock: ×" + Words.plain(clock.speed()),
                new Paragraph("The clock is the same for everybody. Holds, gaps and clean windows run on with it, and"
                        + " what runs out meanwhile is recorded. An open page follows when it is next told something."),
                row(Stream.of(1, 10, 60).map(speed ->
                        Forms.act("Run ×" + speed, () -> change(() -> clock.setSpeed(speed))))),
                row(Stream.of(1, 10, 60).map(minutes -> Forms.act(
                        "Skip " + (minutes < 60 ? minutes + " min" : "1 h"),
                        () -> change(() -> clock.skip(Duration.ofMinutes(minutes)))))));
    }

    /** The page's own clock was told the old time, so it is loaded anew. */
    private static void change(Runnable change) {
        change.run();
        UI.getCurrent().getPage().reload();
    }

    private static Div row(Stream<? extends Component> buttons) {
        return Forms.row(buttons.toArray(Component[]::new));
    }

    private static Component printing() {
        Anchor sheet = new Anchor(DemoLabelSheet.PATH, "All labels as PDF, ten to a sheet of A4");
        sheet.setRouterIgnore(true);
        return Forms.panel("Labels to scan", sheet, new Paragraph("Without a scanner: where a screen waits for a scan,"
                + " choose to type, and enter the text of the first column with its last character."));
    }

    private static DeskTable<Label> table(String heading, List<Label> labels) {
        DeskTable<Label> table = new DeskTable<Label>(heading + " of the demo shop", "There are none now.")
                .text("Type this", label -> label.own().printed())
                .text("Title", Label::title)
                .text("Says", label -> String.join(" · ", label.lines()));
        table.show(labels);
        return table;
    }
}
