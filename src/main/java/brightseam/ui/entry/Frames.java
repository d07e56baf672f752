package brightseam.ui.entry;

import brightseam.kernel.shell.ShopClock;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.DemoMark;
import brightseam.ui.parts.FrameReader;
import brightseam.ui.parts.ScreenFrame;
import com.vaadin.flow.server.VaadinServletRequest;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;

/** Makes the frame round a tablet's screens, and says where its camera frames are read. */
@Component
public class Frames {

    private final ShopClock clock;
    private final SignIn signIn;
    private final String shopName;

    Frames(ShopClock clock, SignIn signIn, @Value("${brightseam.shop-name:Brightseam}") String shopName) {
        this.clock = clock;
        this.signIn = signIn;
        this.shopName = shopName;
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

    /** Where this page's camera frames are read, with the token that its session needs. */
    public FrameReader camera() {
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
