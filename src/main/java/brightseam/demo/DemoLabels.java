package brightseam.demo;

import brightseam.bins.Bin;
import brightseam.bins.shell.Bins;
import brightseam.kit.shell.Kits;
import brightseam.line.Station;
import brightseam.line.shell.Stations;
import brightseam.material.Heat;
import brightseam.material.shell.Heats;
import brightseam.scan.Label;
import brightseam.scan.OwnLabel;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.shell.LiveTravellers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Every label that the demo shop has stuck on something, for whoever wants to scan or type them. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class DemoLabels {

    private final Bins bins;
    private final Stations stations;
    private final Heats heats;
    private final Kits kits;
    private final LiveTravellers travellers;

    DemoLabels(Bins bins, Stations stations, Heats heats, Kits kits, LiveTravellers travellers) {
        this.bins = bins;
        this.stations = stations;
        this.heats = heats;
        this.kits = kits;
        this.travellers = travellers;
    }

    /** The labels as they are now, under the heading of what they are stuck on. */
    Map<String, List<Label>> groups() {
        Map<String, List<Label>> groups = new LinkedHashMap<>();
        groups.put("Badges", badges());
        groups.put("Travellers", travellers.all().stream().map(card -> travellers(
                OwnLabel.of(card.id()), card.traveller().part(), card.traveller().pieces().size())).toList());
        groups.put("Stations", stations.all().stream().map(DemoLabels::station).toList());
        groups.put("Bins", bins.all().stream().filter(bin -> !bin.retired()).map(DemoLabels::bin).toList());
        groups.put("Heats", heats.all().stream().map(DemoLabels::heat).toList());
        groups.put("Kits", kits.open().stream().map(kit ->
                label(OwnLabel.of(kit.id()), "KIT", List.of(kit.title()))).toList());
        return groups;
    }

    /** All of them in one list. */
    List<Label> all() {
        return groups().values().stream().flatMap(List::stream).toList();
    }

    private static List<Label> badges() {
        List<Label> badges = new ArrayList<>();
        for (DemoPerson person : DemoPerson.values()) {
            badges.add(label(OwnLabel.of(person.badge()), person.fullName(),
                    List.of(person.role().name().toLowerCase(Locale.ROOT))));
        }
        return badges;
    }

    private static Label travellers(OwnLabel own, PartIdentity part, int pieces) {
        return label(own, "TRAVELLER", List.of(part.description(), part.partNumber() + ", " + pieces + " pieces"));
    }

    private static Label station(Station station) {
        return label(OwnLabel.of(station.id()), "STATION", List.of(station.title()));
    }

    private static Label bin(Bin bin) {
        return label(OwnLabel.of(bin.id()), bin.binClass().name().replace('_', ' '), List.of());
    }

    private static Label heat(Heat heat) {
        return label(OwnLabel.of(heat.id()), "HEAT",
                List.of("Grade " + heat.grade() + " " + heat.form(), heat.dimensions()));
    }

    private static Label label(OwnLabel own, String title, List<String> lines) {
        return new Label(own, title, lines, true);
    }
}
