package brightseam.demo;

import brightseam.kernel.shell.DemoClock;
import brightseam.scan.Label;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.DemoMark;
import brightseam.ui.parts.ScreenFrame;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.beans.factory.annotation.Value;

/** Hurries the demo's clock, and lists its labels. Registered in the demo shop only. */
@Route(value = DemoView.PATH, registerAtStartup = false)
@PageTitle("Demo")
@PermitAll
@StyleSheet("context://frontend/demo.css")
final class DemoView extends Composite<ScreenFrame> {

    static final String PATH = "demo";

    private final DemoClock clock;
    private final ScreenFrame frame;

    DemoView(DemoClock clock, DemoLabels labels, @Value("${brightseam.shop-name}") String shopName) {
        this.clock = clock;
        this.frame = new ScreenFrame(shopName, Optional.of(new DemoMark(clock.speed())), ZoneId.systemDefault());
        frame.wallTime(clock.now().wall());
        Div page = new Div(new H1("Demo controls"),
                new Paragraph("Everything in this shop is invented. Here its clock can be hurried, for everybody at"
                        + " once; holds, gaps and clean windows run on with it, and what runs out is recorded."),
                buttons(), printing());
        page.addClassName("demo-page");
        labels.groups().forEach((heading, group) -> page.add(table(heading, group)));
        frame.add(page);
    }

    @Override
    protected ScreenFrame initContent() {
        return frame;
    }

    private Component buttons() {
        Section section = new Section(new H2("Clock, now \u00d7" + (long) clock.speed()));
        section.add(row(Stream.of(1, 10, 60).map(speed ->
                Action.other("Run \u00d7" + speed, pressed -> change(() -> clock.setSpeed(speed))))));
        section.add(row(Stream.of(1, 10, 60).map(minutes ->
                Action.other("Skip " + (minutes < 60 ? minutes + " min" : "1 h"),
                        pressed -> change(() -> clock.skip(Duration.ofMinutes(minutes)))))));
        return section;
    }

    /** Open pages count on at the speed they were told, so this page is loaded anew; others follow at their next call. */
    private static void change(Runnable change) {
        change.run();
        UI.getCurrent().getPage().reload();
    }

    private static Div row(Stream<Action> actions) {
        Div row = new Div();
        row.addClassName("demo-row");
        actions.forEach(row::add);
        return row;
    }

    private static Component printing() {
        Anchor sheet = new Anchor(DemoLabelSheet.PATH, "All labels as PDF, to print and scan");
        sheet.setRouterIgnore(true);
        sheet.addClassName("demo-sheet");
        return new Section(new H2("Labels"), sheet, new Paragraph("Without a scanner: press \u201cType\u201d where"
                + " a screen waits for a scan, and enter the text from these tables, with its last character."));
    }

    private static Component table(String heading, List<Label> labels) {
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        Stream.of("Type this", "Label", "What it is").map(NativeTableHeaderCell::new).forEach(cell -> {
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        });
        table.add(head);
        labels.forEach(label -> table.add(new NativeTableRow(typed(label), new NativeTableCell(label.title()),
                new NativeTableCell(String.join(", ", label.lines())))));
        table.setCaptionText(heading);
        return new Section(table);
    }

    private static NativeTableCell typed(Label label) {
        NativeTableCell cell = new NativeTableCell(label.own().printed());
        cell.addClassName("demo-typed");
        return cell;
    }
}
