package brightseam.ui.desk;

import brightseam.bins.Bin;
import brightseam.kit.Kit;
import brightseam.line.Station;
import brightseam.material.Heat;
import brightseam.people.Person;
import brightseam.scan.Label;
import brightseam.scan.OwnLabel;
import brightseam.supply.Supply;
import brightseam.traveller.Traveller;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What labels say beside their symbol. */
public final class LabelTexts {

    private static final int TITLE_MAX = 40;
    private static final int LINE_MAX = 60;

    private LabelTexts() {}

    /** The label of a traveller: what the pieces are, how many, of which heat, for which kit. */
    public static Label of(Traveller traveller, boolean demo) {
        return label(OwnLabel.of(traveller.id()), traveller.part().description(), demo,
                traveller.part().partNumber() + " rev " + traveller.part().drawingRevision(),
                Words.count(traveller.pieces().size(), "piece", "pieces") + " · heat " + traveller.heat(),
                "kit " + traveller.kit() + " · " + traveller.procedure().label());
    }

    /** The label of a bin: its class. */
    public static Label of(Bin bin, boolean demo) {
        String capacity = CapacityWords.of(bin.capacity());
        return label(OwnLabel.of(bin.id()), upper(bin.binClass().name()), demo, capacity,
                bin.binClass().isClean() ? "cleaned parts only, gloves on" : "not for cleaned parts");
    }

    /** The label of a station. */
    public static Label of(Station station, boolean demo) {
        return label(OwnLabel.of(station.id()), station.title(), demo, Wording.words(station.stationClass()));
    }

    /** The label of a heat: grade, form, size, certificate. */
    public static Label of(Heat heat, boolean demo) {
        return label(OwnLabel.of(heat.id()), "Grade " + heat.grade() + " " + heat.form(), demo,
                heat.dimensions(), heat.maker(), "certificate " + heat.certificateNumber());
    }

    /** A badge; the PIN is nowhere on it. */
    public static Label of(Person person, boolean demo) {
        return label(OwnLabel.of(person.badge()), person.name(), demo, person.roles().stream()
                .map(role -> Wording.words(role.name())).collect(Collectors.joining(", ")));
    }

    /** The card of a kit. */
    public static Label of(Kit kit, boolean demo) {
        return label(OwnLabel.of(kit.id()), kit.title(), demo, Words.count(kit.lines().size(), "line", "lines"));
    }

    /** The label of a supply: what it is, its lot, its last day and what it is kept for. */
    public static Label of(Supply supply, boolean demo) {
        String lastDay = supply.lastDay().map(day -> (supply.isGauge() ? "calibrated until " : "good until ") + day)
                .orElse("no expiry date");
        return label(OwnLabel.of(supply.id()), supply.title(), demo,
                Wording.words(supply.type()) + " · " + supply.lot(), lastDay, "for " + keptFor(supply));
    }

    /** What {@code supply} may touch, in words. */
    public static String keptFor(Supply supply) {
        return supply.mayTouch().stream().map(surface -> Wording.words(surface.name()))
                .collect(Collectors.joining(" and ")) + " titanium";
    }

    private static Label label(OwnLabel own, String title, boolean demo, String... lines) {
        return new Label(own, cut(title, TITLE_MAX), List.of(lines).stream().map(line -> cut(line, LINE_MAX)).toList(),
                demo);
    }

    private static String cut(String text, int lengthMax) {
        return text.length() <= lengthMax ? text : text.substring(0, lengthMax - 1) + "…";
    }

    private static String upper(String name) {
        return Wording.words(name).toUpperCase(Locale.ROOT);
    }
}
