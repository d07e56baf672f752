package brightseam.words;

import brightseam.kernel.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Turns refusals into sentences by a table of templates. A template names evidence in braces, with how it is written
 * behind a colon: {@code {left:duration}}.
 */
public final class Wording {

    private static final Pattern PLACE = Pattern.compile("\\{(\\w+)(?::(\\w+))?}");
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final Map<String, Explanation> templates;
    private final ZoneId zone;

    /** Words by refusal code; times are written as the clock in {@code zone} shows them. */
    public Wording(Map<String, Explanation> templates, ZoneId zone) {
        this.templates = Map.copyOf(templates);
        this.zone = zone;
    }

    /** What a person reads about {@code refusal}. */
    public Explanation explain(Refusal refusal) {
        return explain(refusal.code(), refusal.evidence());
    }

    /** What a person reads about a refusal that was written down; a code without words is shown with its evidence. */
    public Explanation explain(String code, Map<String, String> evidence) {
        Explanation template = templates.getOrDefault(code,
                new Explanation("Refused", code + " " + evidence + ".", "Call the lead."));
        return new Explanation(template.word(), capital(fill(template.reason(), evidence)),
                capital(fill(template.wayOut(), evidence)));
    }

    /** The codes that have words. */
    public List<String> codes() {
        return templates.keySet().stream().sorted().toList();
    }

    /** The evidence that the words of {@code code} name. */
    public List<String> evidenceNamed(String code) {
        Explanation template = templates.get(code);
        return PLACE.matcher(template.reason() + template.wayOut()).results().map(place -> place.group(1))
                .distinct().toList();
    }

    /** A code word as people write it: {@code CLEAN_BIN} and {@code clean-bin} as {@code clean bin}. */
    public static String words(String code) {
        return code.toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ');
    }

    private String fill(String template, Map<String, String> evidence) {
        return PLACE.matcher(template).replaceAll(place -> Matcher.quoteReplacement(written(place, evidence)));
    }

    private String written(MatchResult place, Map<String, String> evidence) {
        String value = evidence.getOrDefault(place.group(1), "?");
        return switch (place.group(2)) {
            case null -> value;
            case "time" -> CLOCK.format(Instant.parse(value).atZone(zone));
            case "stamp" -> Words.stamp(Instant.parse(value), zone);
            case "duration" -> Words.duration(Duration.parse(value));
            case "or" -> or(value);
            case "m3" -> Words.quantity(new BigDecimal(value).movePointLeft(3).setScale(1, RoundingMode.HALF_UP), "m³");
            default -> words(value);
        };
    }

    private static String or(String list) {
        List<String> words = Arrays.stream(list.split(",\\s*")).map(Wording::words).toList();
        return words.size() < 2 ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " or " + words.getLast();
    }

    private static String capital(String sentence) {
        return sentence.isEmpty() ? sentence
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }
}
