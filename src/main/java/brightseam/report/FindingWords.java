package brightseam.report;

import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.procedure.Vocabulary;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a nonconformance's text says, on every screen and on paper alike. */
public final class FindingWords {

    /** As the rules write lengths of time into the text. */
    private static final Pattern DURATION = Pattern.compile("\\bPT[0-9HMS.]+\\b");

    private FindingWords() {}

    /**
     * The text as people say it: lengths of time with their units, a reading by its label with unit and limits, what
     * somebody wrote as it was written.
     *
     * @param text of the nonconformance, as the record holds it
     * @param step where it arose
     */
    public static String of(Cause cause, String text, Step step, Vocabulary vocabulary) {
        return switch (cause) {
            case HOLD_OVERRUN, GAP_EXCEEDED, TIME_NOT_OBSERVED -> "Allowed: "
                    + DURATION.matcher(text).replaceAll(found ->
                    Words.duration(Duration.parse(found.group())));
            case READING_OUT_OF_LIMITS -> reading(text, step, vocabulary);
            case HOLD_CUT_SHORT, INSPECTION_REJECTED, REPORTED, SUSPECT, JOINT_EXCURSION, JOINT_UNPROVEN,
                    JOINT_REJECTED -> text;
        };
    }

    /** The text of a reading is its name and its value. */
    private static String reading(String text, Step step, Vocabulary vocabulary) {
        int space = text.lastIndexOf(' ');
        Optional<ReadingSpec> spec = step.readings().stream()
                .filter(known -> space > 0 && known.id().equals(text.substring(0, space))).findFirst();
        return spec.map(known -> {
            String symbol = vocabulary.symbol(known);
            String value = Phrases.value(known, symbol, new BigDecimal(text.substring(space + 1)));
            return known.label() + ": " + value
                    + (known.isPassFail() ? "" : "; limits " + Phrases.limits(known, symbol));
        }).orElse(text);
    }
}
