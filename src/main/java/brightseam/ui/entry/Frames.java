package brightseam.ui.entry;

import brightseam.kernel.shell.ShopClock;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.DemoMark;
import brightseam.ui.parts.FrameReader;
import brightseam.ui.parts.ScanInput;
import brightseam.ui.parts.ScreenFrame;
import com.vaadin.flow.server.VaadinServletRequest;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;

/** Makes the frame round a tablet's screens, and its ear for scans. */
@Component
public class Frames {

    /** Fewer characters than any label has. */
    private static final int SCAN_LENGTH_MIN = 4;

    private final ShopClock clock;
    private final SignIn signIn;
    private final String shopName;
    private final Duration burst;
    private final Duration idle;

    Frames(ShopClock clock, SignIn signIn, @Value("${brightseam.shop-name:Brightseam}") String shopName,
            @Value("${brightseam.scanner-burst-millis:40}") long burstMillis,
            @Value("${brightseam.scanner-idle-millis:120}") long idleMillis) {
        this.clock = clock;
        this.signIn = signIn;
        this.shopName = shopName;
        this.burst = Duration.ofMillis(burstMillis);
        this.idle = Duration.ofMillis(idleMillis);
    }

    /** A frame that says who is signed in on which tablet, with the way to leave or hand over. */
    public ScreenFrame make() {
        ScreenFrame frame = new ScreenFrame(shopName,
                Optional.of(clock).filter(ShopClock::isDemo).map(demo -> new DemoMark(demo.speed())),
                ZoneId.systemDefault());
        frame.wallTime(clock.now().wall());
        signIn.here().ifPresent(here -> frame.way(leave(here)));
        return frame;
    }

    /** The page's ear for scans, set to the shop's scanners, with its camera frames read by this server. */
    public ScanInput scans() {
        ScanInput scans = new ScanInput(camera());
        scans.timing(burst, idle, SCAN_LENGTH_MIN);
        return scans;
    }

    /** With the token that the page's session needs. */
    private static FrameReader camera() {
        return Optional.ofNullable(VaadinServletRequest.getCurrent())
                .map(request -> (CsrfToken) request.getAttribute(CsrfToken.class.getName()))
                .map(token -> new FrameReader("scan/frame", token.getHeaderName(), token.getToken()))
                .orElseGet(() -> FrameReader.at("scan/frame"));
    }

    private static Action leave(SignedInPerson here) {
        Action leave = Action.other(here.displayName() + " · " + here.tablet(),
                pressed -> pressed.getSource().getUI().ifPresent(ui -> ui.navigate(LeaveView.class)));
        leave.setAriaLabel("Signed in: " + here.displayName() + ", tablet " + here.tablet()
                + ". Hand over, sign out or choose another screen");
        return leave;
    }
}
