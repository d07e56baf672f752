package brightseam.ui.chamber;

import brightseam.device.MeterNow;
import brightseam.kernel.SessionId;
import brightseam.session.Phase;
import brightseam.session.shell.SessionView;
import com.vaadin.flow.router.BeforeEnterEvent;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What of a session lives from second to second. */
final class SessionSights {

    private final ChamberServices services;
    private final StripWriter strips;

    SessionSights(ChamberServices services, ZoneId zone) {
        this.services = services;
        this.strips = new StripWriter(zone);
    }

    /** The session that the page's address names; empty where it names none. */
    static Optional<SessionId> named(BeforeEnterEvent entering) {
        try {
            return entering.getRouteParameters().get("session").map(SessionId::new);
        } catch (IllegalArgumentException noLabel) {
            return Optional.empty();
        }
    }

    Live live(SessionView view, List<Live.Condition> conditions) {
        List<MeterNow> meters = Stream.concat(Stream.of(view.session().chamber()),
                        view.session().lockStation().stream())
                .flatMap(station -> services.readings().at(station).stream()).toList();
        Strip strip = strips.strip(view, services.argon().outlook(
                view.session().chamber(), Optional.empty(), Optional.empty(), view.now()), meters);
        return new Live(strip, strips.oxygen(view), conditions,
                view.session().phase() == Phase.PURGING ? services.charts().of(view) : Optional.empty(),
                LockCards.oxygen(view));
    }
}
