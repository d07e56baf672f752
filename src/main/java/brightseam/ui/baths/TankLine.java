package brightseam.ui.baths;

import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.line.Bath;
import brightseam.line.LoadTaken;
import brightseam.line.Station;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One tank on the list.
 *
 * @param station its label
 * @param title what people call it
 * @param liquid what it holds; empty without a bath
 * @param state one word or two: fit, or what stands against it
 * @param detail why, or when the next analysis is due
 * @param analysed whether analyses are taken of it
 * @param stops whether nothing goes in now
 * @param inside what hangs in it
 */
record TankLine(
        StationId station, String title, String liquid, String state, String detail, boolean analysed, boolean stops,
        String inside) {

    /** So near to its end an interval is told as soon over; the shop's own choice. */
    private static final Duration SOON = Duration.ofHours(24);
    private static final int LOADS_SOON = 4;

    /** How {@code station} stands at {@code now}; {@code inside} is what hangs in it by the travellers' records. */
    static TankLine of(Station station, Optional<Bath> bath, List<LoadTaken> inside, Moment now, Wording wording,
            ZoneId zone) {
        if (bath.isEmpty()) {
            return new TankLine(station.id(), station.title(), "", "No bath registered",
                    "Tank " + station.id() + " has no bath registered; nothing is asked of it.", false, false,
                    "not known");
        }
        String hangs = inside(inside, now, zone);
        String liquid = BathWords.liquid(bath.get().liquid());
        boolean analysed = bath.get().isAnalysed();
        if (station.isOutOfUse()) {
            return new TankLine(station.id(), station.title(), liquid, "Out of use",
                    station.outOfUseReason().orElseThrow(), analysed, true, hangs);
        }
        List<Explanation> against = bath.get().objections(now).stream().map(wording::explain).toList();
        if (!against.isEmpty()) {
            return new TankLine(station.id(), station.title(), liquid, against.getFirst().word(),
                    against.stream().map(Explanation::reason).distinct().collect(Collectors.joining(" ")), analysed,
                    true, hangs);
        }
        return new TankLine(station.id(), station.title(), liquid, isSoonDue(bath.get(), now) ? "Analysis due soon"
                : "Fit", due(bath.get(), now, zone), analysed, false, hangs);
    }

    /** When the next analysis is due, in words; whichever comes first. */
    static String due(Bath bath, Moment now, ZoneId zone) {
        if (!bath.isAnalysed()) {
            return "Not analysed.";
        }
        List<String> ways = new ArrayList<>();
        bath.dueAt().ifPresent(at -> ways.add(Words.when(at.wall(), now.wall(), zone)));
        bath.loadsLeft().ifPresent(left -> ways.add("after " + Words.count(left, "more load", "more loads")));
        bath.areaLeftSquareMetres().ifPresent(left -> ways.add("after " + Words.quantity(left, "m²") + " more"));
        return ways.isEmpty() ? "No interval for analyses is set."
                : "Analysis due " + String.join(", or ", ways) + ".";
    }

    static String inside(List<LoadTaken> inside, Moment now, ZoneId zone) {
        return inside.isEmpty() ? "empty" : inside.stream().map(load -> load.basket() + " since "
                + Words.clockTime(load.at().wall(), now.wall(), zone) + " (" + load.travellers().stream()
                .map(Object::toString).collect(Collectors.joining(", ")) + ")").collect(Collectors.joining("; "));
    }

    private static boolean isSoonDue(Bath bath, Moment now) {
        return bath.dueAt().filter(at -> at.since(now).compareTo(SOON) < 0).isPresent()
                || bath.loadsLeft().filter(left -> left <= LOADS_SOON).isPresent();
    }
}
