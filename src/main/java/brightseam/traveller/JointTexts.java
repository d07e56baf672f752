package brightseam.traveller;

import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a nonconformance says that opens by itself over a joint: which joint, which seconds, in figures. */
final class JointTexts {

    private static final int MILLIS_SCALE = 3;

    private JointTexts() {}

    /** Oxygen above the limit, from when to when after the arc began. */
    static String excursion(JointFact joint) {
        return name(joint) + ": oxygen above " + plain(joint.oxygenPpmLimit()) + " ppm for "
                + plain(joint.secondsAbove()) + " s, highest " + plain(joint.oxygenPpmHighest()) + " ppm"
                + spans(joint.excursions(), joint.startedAt());
    }

    /** No usable reading, from when to when after the arc began. */
    static String unproven(JointFact joint) {
        return name(joint) + ": no usable oxygen reading" + (joint.gaps().isEmpty() ? " over the whole time"
                : " for " + plain(seconds(joint.gaps())) + " s" + spans(joint.gaps(), joint.startedAt()));
    }

    /** What was seen and what the rule says next. */
    static String rejected(JudgedFact verdict) {
        String found = verdict.findings().isEmpty() ? "" : "; " + String.join(", ", verdict.findings());
        String next = verdict.next().isBlank() ? "" : ". " + verdict.next();
        return verdict.joint() + ", run " + verdict.run() + ": " + verdict.colour() + found + ", by "
                + verdict.acceptance() + next;
    }

    private static String name(JointFact joint) {
        return joint.joint() + ", run " + joint.run();
    }

    private static String spans(List<SpanFact> spans, Moment began) {
        return spans.isEmpty() ? "" : spans.stream().map(span -> "from " + plain(seconds(began, span.from())) + " s to "
                + plain(seconds(began, span.to())) + " s" + peak(span.oxygenPpmHighest()))
                .collect(Collectors.joining(", ", "; ", " after the arc began"));
    }

    private static String peak(Optional<BigDecimal> ppm) {
        return ppm.map(highest -> " (" + plain(highest) + " ppm)").orElse("");
    }

    private static BigDecimal seconds(List<SpanFact> spans) {
        return spans.stream().map(span -> seconds(span.from(), span.to())).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal seconds(Moment from, Moment to) {
        return BigDecimal.valueOf(to.since(from).toMillis(), MILLIS_SCALE).setScale(1, RoundingMode.HALF_EVEN);
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }
}
