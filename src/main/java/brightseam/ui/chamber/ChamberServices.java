package brightseam.ui.chamber;

import brightseam.chamber.shell.ArgonWatch;
import brightseam.chamber.shell.Chambers;
import brightseam.device.shell.Readings;
import brightseam.kernel.shell.ShopClock;
import brightseam.kit.shell.Kits;
import brightseam.people.shell.Authenticator;
import brightseam.people.shell.People;
import brightseam.procedure.Vocabulary;
import brightseam.session.shell.LockActions;
import brightseam.session.shell.SessionActions;
import brightseam.session.shell.SessionViews;
import brightseam.session.shell.Sessions;
import brightseam.weld.shell.Joints;
import brightseam.weld.shell.WeldMaps;
import brightseam.words.Wording;
import org.springframework.stereotype.Component;

/** The services that the chamber's screens ask. */
@Component
record ChamberServices(
        SessionViews views,
        Sessions sessions,
        SessionActions actions,
        LockActions lock,
        Joints joints,
        WeldMaps maps,
        Readings readings,
        Chambers chambers,
        ArgonWatch argon,
        Kits kits,
        PurgeCharts charts,
        Authenticator authenticator,
        People people,
        Vocabulary vocabulary,
        Wording wording,
        ShopClock clock) {}
