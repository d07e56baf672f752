package brightseam.lineplan.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.shell.ShopClock;
import brightseam.kit.shell.Kits;
import brightseam.line.Bath;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.lineplan.Layout;
import brightseam.lineplan.LineLoad;
import brightseam.lineplan.LineOrders;
import brightseam.lineplan.LineProblems;
import brightseam.lineplan.LineSituation;
import brightseam.lineplan.LineStation;
import brightseam.lineplan.Working;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.people.shell.Tablet;
import brightseam.people.shell.Tablets;
import brightseam.traveller.shell.LiveTravellers;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Reads how the line stands now. */
@Component
class LineNow {

    private final LiveTravellers live;
    private final Stations stations;
    private final Baths baths;
    private final Kits kits;
    private final People people;
    private final Tablets tablets;
    private final ShopClock clock;
    private final Layout layout;

    LineNow(LiveTravellers live, Stations stations, Baths baths, Kits kits, People people, Tablets tablets,
            ShopClock clock, @Value("${brightseam.line-layout:}") String layoutFile) {
        this.live = live;
        this.stations = stations;
        this.baths = baths;
        this.kits = kits;
        this.people = people;
        this.tablets = tablets;
        this.clock = clock;
        this.layout = LayoutFile.read(layoutFile);
    }

    LineSituation read(LineOrders orders) {
        Map<KitId, Instant> due = new HashMap<>();
        kits.open().forEach(kit -> kit.sessionDue().ifPresent(at -> due.put(kit.id(), at)));
        Moment now = clock.now();
        Map<StationId, Bath> filled = baths.all().stream().collect(Collectors.toMap(Bath::station, bath -> bath));
        List<LineLoad.Lot> lots = live.all().stream()
                .map(card -> new LineLoad.Lot(card.traveller(), card.procedure())).toList();
        return new LineProblems(layout, ZoneId.systemDefault()).read(
                now, lots, stations.all().stream().flatMap(one ->
                        station(one, Optional.ofNullable(filled.get(one.id())), now).stream()).toList(),
                working(orders), due, orders.aim());
    }

    List<Working> fabricators() {
        return people.all().stream().filter(person -> person.active() && person.holds(Role.FABRICATOR))
                .map(person -> new Working(person.badge(), person.name())).toList();
    }

    /** Who was named; else who is signed in; else one of those who could be. */
    private List<Working> working(LineOrders orders) {
        List<Working> all = fabricators();
        List<Working> named = all.stream().filter(person -> orders.hands().contains(person.badge())).toList();
        if (!named.isEmpty()) {
            return named;
        }
        Set<BadgeId> signedIn = tablets.all().stream().map(Tablet::badge).flatMap(Optional::stream)
                .collect(Collectors.toSet());
        List<Working> here = all.stream().filter(person -> signedIn.contains(person.badge()))
                .limit(LinePlan.HANDS_MAX).toList();
        return here.isEmpty() ? all.stream().limit(1).toList() : here;
    }

    /** A tank's own record says how many baskets it takes; where its bath is not fit, nothing goes in. */
    private Optional<LineStation> station(Station station, Optional<Bath> bath, Moment now) {
        boolean unfit = bath.filter(found -> !found.objections(now).isEmpty()).isPresent();
        return layout.place(station.stationClass()).map(place -> new LineStation(station.id(), station.stationClass(),
                bath.map(Bath::basketsAtOnce).orElse(place.baskets()), station.isOutOfUse() || unfit));
    }
}
