package brightseam.ui.weld;

import brightseam.weld.GasEvidence;
import brightseam.weld.HotSpan;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the readings over a joint prove, in words. */
final class EvidenceWords {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ENGLISH);

    private EvidenceWords() {}

    /** The verdict on {@code evidence} in a word or two. */
    static String word(GasEvidence evidence) {
        if (!evidence.excursions().isEmpty()) {
            return "Above the limit";
        }
        return evidence.clean() ? "Proven" : "Not proven";
    }

    /** What it says, one line for each thing. */
    static List<String> lines(GasEvidence evidence, ZoneId zone) {
        List<String> lines = new ArrayList<>();
        lines.add("Oxygen " + evidence.oxygenPpmHighest().map(EvidenceWords::ppm).orElse("not read")
                + " at most, " + evidence.oxygenPpmMean().map(EvidenceWords::ppm).orElse("not read")
                + " in the mean; the limit is " + ppm(evidence.oxygenPpmLimit()) + ".");
        evidence.excursions().forEach(span -> lines.add("Above the limit for " + span.seconds().toPlainString()
                + " s, " + fromTo(span, zone) + span.oxygenPpmPeak().map(peak -> ", up to " + ppm(peak)).orElse("")
                + "."));
        evidence.gaps().forEach(span -> lines.add("No reading that counts for " + span.seconds().toPlainString()
                + " s, " + fromTo(span, zone) + "; " + evidence.gapSecondsMax().toPlainString() + " s are allowed."));
        if (evidence.readingsDoubtful() > 0) {
            lines.add(evidence.readingsDoubtful() + " of " + evidence.readings()
                    + " readings are in doubt: out of range, frozen, or the calibration was over.");
        }
        lines.add(evidence.readings() + " readings of " + evidence.meter() + ", " + clock(evidence.from(), zone)
                + " to " + clock(evidence.to(), zone) + ", SHA-256 " + evidence.seriesSha256().substring(0, 12)
                + "….");
        return lines;
    }

    private static String fromTo(HotSpan span, ZoneId zone) {
        return clock(span.from(), zone) + " to " + clock(span.to(), zone);
    }

    private static String clock(Instant at, ZoneId zone) {
        return CLOCK.format(at.atZone(zone));
    }

    private static String ppm(BigDecimal value) {
        return value.toPlainString() + " ppm";
    }
}
