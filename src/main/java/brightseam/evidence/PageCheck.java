package brightseam.evidence;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether the text on the pages of a print shows what the entries say: the traveller, the last hash, and every
 * signature with its name and time. It finds what was taken out or altered, not what was painted over or added; a
 * person who compares does.
 */
public final class PageCheck {

    /** As the print writes times. */
    static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM uuuu HH:mm:ss", Locale.ENGLISH);

    private static final Pattern ZONE = Pattern.compile("wall clock of the zone (\\S+);");
    /** Stamp, meaning and roles stand between a name and its time. */
    private static final int BETWEEN_MAX = 200;

    private PageCheck() {}

    /** The zone whose wall clock the pages say they show; empty where they say none. */
    public static Optional<ZoneId> zone(String pages) {
        Matcher found = ZONE.matcher(spaced(pages));
        try {
            return found.find() ? Optional.of(ZoneId.of(found.group(1))) : Optional.empty();
        } catch (DateTimeException noZone) {
            return Optional.empty();
        }
    }

    /** The first thing that the pages do not show; empty where nothing is missed. */
    public static Optional<Misfit> missing(Proof proof, String pages) {
        String text = spaced(pages);
        ZoneId zone = zone(pages).orElse(ZoneOffset.UTC);
        if (!text.contains("Traveller " + proof.traveller())) {
            return Optional.of(new Misfit.PagesLack("traveller " + proof.traveller()));
        }
        if (!text.contains(proof.lastHash())) {
            return Optional.of(new Misfit.PagesLack("the last hash, " + proof.lastHash()));
        }
        return proof.lines().stream().filter(line -> line.signer().isPresent() && line.at().isPresent())
                .filter(line -> !shows(text, line.signer().get(), TIME.format(line.at().get().atZone(zone))))
                .findFirst()
                .map(line -> new Misfit.PagesLack("entry " + line.number() + ", signed by " + line.signer().get()
                        + " at " + TIME.format(line.at().get().atZone(zone)) + " in the zone " + zone));
    }

    private static boolean shows(String text, String name, String time) {
        String shownName = spaced(name);
        for (int at = text.indexOf(time); at >= 0; at = text.indexOf(time, at + 1)) {
            int from = Math.max(0, at - BETWEEN_MAX - shownName.length());
            if (text.substring(from, Math.min(text.length(), at + time.length() + BETWEEN_MAX)).contains(shownName)) {
                return true;
            }
        }
        return false;
    }

    private static String spaced(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ").strip();
    }
}
