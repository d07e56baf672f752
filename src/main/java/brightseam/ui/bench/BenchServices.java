package brightseam.ui.bench;

import brightseam.bins.shell.Bins;
import brightseam.kernel.shell.ShopClock;
import brightseam.line.shell.Stations;
import brightseam.people.shell.Authenticator;
import brightseam.people.shell.People;
import brightseam.people.shell.Tablets;
import brightseam.procedure.Vocabulary;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.shell.LiveTravellers;
import brightseam.traveller.shell.LoadActions;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import brightseam.words.Wording;
import org.springframework.stereotype.Component;

/** The services that a bench asks. */
@Component
record BenchServices(
        Travellers travellers,
        TravellerActions actions,
        LoadActions loads,
        LiveTravellers live,
        Bins bins,
        Supplies supplies,
        Stations stations,
        Tablets tablets,
        OpenCards cards,
        Authenticator authenticator,
        People people,
        Vocabulary vocabulary,
        Wording wording,
        ShopClock clock) {}
