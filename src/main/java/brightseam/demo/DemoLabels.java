package brightseam.demo;

import brightseam.bins.shell.Bins;
import brightseam.kit.shell.Kits;
import brightseam.line.shell.Stations;
import brightseam.material.shell.Heats;
import brightseam.people.shell.People;
import brightseam.scan.Label;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.shell.LiveTravellers;
import brightseam.ui.desk.LabelTexts;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Every label that the demo shop has stuck on something, for whoever wants to scan or type them. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class DemoLabels {

    private final People people;
    private final Bins bins;
    private final Stations stations;
    private final Heats heats;
    private final Kits kits;
    private final Supplies supplies;
    private final LiveTravellers travellers;

    DemoLabels(People people, Bins bins, Stations stations, Heats heats, Kits kits, Supplies supplies,
            LiveTravellers travellers) {
        this.people = people;
        this.bins = bins;
        this.stations = stations;
        this.heats = heats;
        this.kits = kits;
        this.supplies = supplies;
        this.travellers = travellers;
    }

    /** The labels as they are now, under the heading of what they are stuck on. */
    Map<String, List<Label>> groups() {
        Map<String, List<Label>> groups = new LinkedHashMap<>();
        groups.put("Badges", people.all().stream().map(person -> LabelTexts.of(person, true)).toList());
        groups.put("Travellers", travellers.all().stream().map(card -> LabelTexts.of(card.traveller(), true)).toList());
        groups.put("Stations", stations.all().stream().map(station -> LabelTexts.of(station, true)).toList());
        groups.put("Bins", bins.all().stream().filter(bin -> !bin.retired())
                .map(bin -> LabelTexts.of(bin, true)).toList());
        groups.put("Supplies", supplies.all().stream().filter(supply -> supply.standing().isUsable())
                .map(supply -> LabelTexts.of(supply, true)).toList());
        groups.put("Heats", heats.all().stream().map(heat -> LabelTexts.of(heat, true)).toList());
        groups.put("Kits", kits.open().stream().map(kit -> LabelTexts.of(kit, true)).toList());
        return groups;
    }

    /** All of them in one list. */
    List<Label> all() {
        return groups().values().stream().flatMap(List::stream).toList();
    }
}
