package brightseam.report;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Moment;
import brightseam.traveller.JointFact;
import brightseam.traveller.JudgedFact;
import brightseam.traveller.LockPassFact;
import brightseam.traveller.Photograph;
import brightseam.traveller.SpanFact;
import brightseam.words.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a joint, its evidence and its verdicts are called, on screen and on paper alike. */
public final class JointWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final int HASH_SHOWN = 16;
    private static final int MILLIS_SCALE = 3;

    private JointWords() {}

    /** {@code Joint K-0047.J03, run 2}. */
    public static String heading(JointTaken joint) {
        return "Joint " + joint.fact().joint() + ", run " + joint.fact().run();
    }

    /** Who welded what, where, when, with what. */
    public static String made(JointTaken joint, ZoneId zone) {
        JointFact fact = joint.fact();
        String others = fact.parts().stream().filter(part -> !part.traveller().equals(joint.lot()))
                .map(part -> part.traveller() + (part.pieces().isEmpty() ? "" : " " + Phrases.pieces(part.pieces())))
                .collect(Collectors.joining(", "));
        return "Of this lot " + Phrases.pieces(joint.pieces()) + (others.isEmpty() ? "" : "; with " + others)
                + ". Welded in session " + fact.session() + " at " + fact.chamber() + " by " + joint.welder() + " ("
                + joint.welder().badge() + "), filler " + fact.filler() + ", back side "
                + Wording.words(fact.backSide()) + ". Arc " + Phrases.when(fact.startedAt(), zone) + " for "
                + seconds(fact.startedAt(), fact.stoppedAt()) + " s, in argon until "
                + Phrases.when(fact.hotUntil(), zone) + (joint.pass() > 1 ? "; pass " + joint.pass()
                        + " of the weld step" : "") + (fact.simulated() ? ". SIMULATED READINGS" : "") + ".";
    }

    /** What the series proves, stretch by stretch. */
    public static List<String> evidence(JointTaken joint) {
        return IntStream.range(0, joint.stretches().size())
                .mapToObj(number -> "Oxygen " + joint.stretch(number) + evidence(joint.stretches().get(number)))
                .toList();
    }

    private static String evidence(JointFact fact) {
        String above = fact.exceedsLimit() ? "ABOVE IT for " + plain(fact.secondsAbove()) + " s"
                + spans(fact.excursions(), fact.startedAt()) : "never above it";
        String proven = fact.proven() ? "proven over the whole time"
                : "NOT PROVEN over the whole time" + spans(fact.gaps(), fact.startedAt());
        return ", meter " + fact.oxygenMeter() + ": highest " + plain(fact.oxygenPpmHighest())
                + " ppm, mean over time " + plain(fact.oxygenPpmMean()) + " ppm, limit " + plain(fact.oxygenPpmLimit())
                + " ppm, " + above + "; " + proven + (fact.proven() && !fact.gaps().isEmpty()
                        ? ", shorter gaps" + spans(fact.gaps(), fact.startedAt()) : "")
                + ". SHA-256 of the readings " + fact.seriesSha256().substring(0, HASH_SHOWN) + "…";
    }

    /** What an inspector saw. */
    public static String verdict(JudgedFact verdict) {
        String findings = verdict.findings().isEmpty() ? "" : "; " + String.join("; ", verdict.findings());
        String photographs = verdict.photographs().isEmpty() ? "no photograph" : verdict.photographs().stream()
                .map(JointWords::photograph).collect(Collectors.joining(", ", "photographs: ", ""));
        String next = verdict.next().isBlank() ? "" : " " + verdict.next() + ".";
        return (verdict.accepted() ? "Accepted: " : "REJECTED: ") + "colour " + verdict.colour() + findings
                + ". Judged by " + verdict.acceptance() + ", light " + verdict.light() + "; " + photographs + "."
                + next;
    }

    /** In or out, between what, how purged, with what oxygen. */
    public static String pass(LockPassFact pass, ZoneId zone) {
        return "Lock pass " + pass.number() + (pass.inward() ? ", in" : ", out") + ", session " + pass.session()
                + " at " + pass.lock() + ", " + Phrases.when(pass.begunAt(), zone) + " to "
                + Phrases.when(pass.endedAt(), zone) + ". Purged: " + pass.purge()
                + ppm(pass.oxygenPpmLock(), "; oxygen in the lock before the second door ")
                + ppm(pass.oxygenPpmChamber(), "; highest in the chamber after it ")
                + (pass.simulated() ? ". SIMULATED READINGS" : "") + ".";
    }

    /** Until when it is calibrated or may be used. */
    public static String lastDay(Gear gear) {
        return gear.lastDay().map(JointWords::day).map(day -> gear.contact().kind() == ContactKind.GAUGE
                ? "calibrated until " + day : "until " + day).orElse("no day registered");
    }

    private static String day(LocalDate day) {
        return DAY.format(day);
    }

    private static String photograph(Photograph photograph) {
        return photograph.name() + " (" + photograph.sha256().substring(0, HASH_SHOWN) + "…)";
    }

    private static String ppm(Optional<BigDecimal> value, String what) {
        return value.map(ppm -> what + plain(ppm) + " ppm").orElse("");
    }

    private static String spans(List<SpanFact> spans, Moment began) {
        return spans.isEmpty() ? "" : spans.stream().map(span -> seconds(began, span.from()) + " to "
                        + seconds(began, span.to()) + " s" + span.oxygenPpmHighest()
                        .map(highest -> ", " + plain(highest) + " ppm").orElse(""))
                .collect(Collectors.joining("; ", " (", " after the arc began)"));
    }

    private static String seconds(Moment from, Moment to) {
        return plain(BigDecimal.valueOf(to.since(from).toMillis(), MILLIS_SCALE).setScale(1, RoundingMode.HALF_EVEN));
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }
}
