package brightseam.ui.chamber;

import brightseam.kernel.shell.ShopClock;
import brightseam.ui.parts.DemoMark;
import brightseam.ui.parts.FrameReader;
import brightseam.ui.parts.ScanInput;
import brightseam.ui.parts.ScreenFrame;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.time.ZoneOffset;
import java.util.Optional;

/** Every card of a session, one page each: gallery/chamber/check-in, gallery/chamber/purging and so on. */
@Route("gallery/chamber/:card")
@PageTitle("Chamber")
@AnonymousAllowed
@StyleSheet("context://frontend/bench.css")
@StyleSheet("context://frontend/chamber.css")
public class ChamberGallery extends Div implements BeforeEnterObserver, Hands {

    private final Samples samples;
    private final ScreenFrame frame =
            new ScreenFrame("Tidewell Frames", Optional.of(new DemoMark(1)), ZoneOffset.UTC);
    private final ChamberScreen screen;
    private final Span said = new Span();
    private String card = "";

    /** Opens with a welder signed in. */
    public ChamberGallery(ShopClock clock) {
        this.samples = new Samples(clock.now());
        this.screen = new ChamberScreen(new Faces(this, clock, Samples.notice()), this);
        frame.wallTime(clock.now().wall());
        frame.way(new NativeButton("Ada Quill · TABLET-3"));
        ScanInput scans = new ScanInput(new FrameReader("scan/frame", "X-Shop", "token"));
        said.addClassNames("said", "only-read-aloud");
        Div page = new Div(screen, scans, said);
        page.addClassNames("bench", "chamber");
        frame.add(page);
        add(frame);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        card = entering.getRouteParameters().get("card").orElseThrow();
        screen.show(samples.card(card), samples.live(card));
    }

    private void say(String what) {
        said.setText(said.getText() + what + " ");
    }

    @Override
    public void touches(Act act) {
        say(act.kind().name());
    }

    @Override
    public void confirms() {
        say("confirmed");
    }

    @Override
    public void because(String reason) {
        say("because " + reason);
    }

    @Override
    public void types() {
        say("types");
    }

    @Override
    public void signs(String pin) {
        say("signed");
    }

    @Override
    public void goesBack() {
        say("back");
    }

    @Override
    public void goes(String path) {
        say("goes " + path);
    }

    @Override
    public void arc(boolean start, int run, long atElapsedMillis) {
        say((start ? "start " : "stop ") + run);
        if (start) {
            screen.show(samples.card("arc"), samples.live("arc"));
        } else {
            screen.show(samples.card("joint"), samples.live("joint"));
        }
    }
}
