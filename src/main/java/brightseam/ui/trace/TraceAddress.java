package brightseam.ui.trace;

import brightseam.kernel.Syntax;
import brightseam.kernel.TravellerId;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.TraceQuestion;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the page's address asks for: a thing, or pieces, or nothing yet.
 *
 * @param question about a thing
 * @param traveller whose pieces are asked about
 * @param piece one of them; empty for all
 */
public record TraceAddress(
        Optional<TraceQuestion> question, Optional<TravellerId> traveller, Optional<Integer> piece) {

    private static final String PAGE = "trace";
    private static final String TRAVELLER = "traveller";

    /**
     * What {@code parameters} ask for. A station with a lot is the bath in its tank.
     *
     * @throws IllegalArgumentException saying what is wrong with them
     */
    static TraceAddress read(Map<String, List<String>> parameters, ZoneId zone) {
        Optional<String> kind = one(parameters, "kind").map(text -> text.toLowerCase(Locale.ROOT));
        Optional<String> label = one(parameters, "label").map(text -> text.toUpperCase(Locale.ROOT));
        if (kind.isEmpty()) {
            return new TraceAddress(Optional.empty(), Optional.empty(), Optional.empty());
        }
        if (kind.get().equals(TRAVELLER)) {
            return new TraceAddress(Optional.empty(), Optional.of(label.map(TravellerId::new).orElseThrow(() ->
                    new IllegalArgumentException("give the label of the traveller"))),
                    one(parameters, "piece").map(TraceAddress::number));
        }
        Optional<String> lot = one(parameters, "lot");
        ThingKind asked = kind(kind.get());
        ThingKind of = asked == ThingKind.STATION && lot.isPresent() ? ThingKind.BATH : asked;
        label.ifPresent(text -> Syntax.text("label", text, 24));
        return new TraceAddress(Optional.of(new TraceQuestion(of, label, of.hasLots() ? lot : Optional.empty(),
                one(parameters, "from").map(text -> time(text, zone)),
                one(parameters, "until").map(text -> time(text, zone)))), Optional.empty(), Optional.empty());
    }

    /** The address of everything that {@code thing} touched. */
    public static String of(Thing thing) {
        return of(TraceQuestion.of(thing), ZoneId.of("UTC"));
    }

    /** The address of {@code question}, its times as the clocks of {@code zone} say them. */
    static String of(TraceQuestion question, ZoneId zone) {
        Map<String, String> parameters = new LinkedHashMap<>();
        parameters.put("kind", question.kind().name().toLowerCase(Locale.ROOT));
        question.label().ifPresent(label -> parameters.put("label", label));
        question.lot().ifPresent(lot -> parameters.put("lot", lot));
        question.from().ifPresent(from -> parameters.put("from", local(from, zone)));
        question.until().ifPresent(until -> parameters.put("until", local(until, zone)));
        return address(parameters);
    }

    /** The address of everything that touched {@code traveller}. */
    public static String of(TravellerId traveller) {
        return address(Map.of("kind", TRAVELLER)) + "&label=" + traveller;
    }

    /** The address of everything that touched one of its pieces. */
    public static String of(TravellerId traveller, int piece) {
        return of(traveller) + "&piece=" + piece;
    }

    private static String address(Map<String, String> parameters) {
        return PAGE + "?" + parameters.entrySet().stream()
                .map(entry -> entry.getKey() + "=" + URLEncoder.encode(entry.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private static Optional<String> one(Map<String, List<String>> parameters, String name) {
        return parameters.getOrDefault(name, List.of()).stream().map(String::strip)
                .filter(text -> !text.isEmpty()).findFirst();
    }

    private static ThingKind kind(String text) {
        for (ThingKind kind : ThingKind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(text)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no such kind of thing: " + text);
    }

    private static int number(String text) {
        if (!text.matches("\\d{1,4}")) {
            throw new IllegalArgumentException("piece: a number");
        }
        return Integer.parseInt(text);
    }

    private static Instant time(String text, ZoneId zone) {
        try {
            return LocalDateTime.parse(text).atZone(zone).toInstant();
        } catch (DateTimeParseException odd) {
            throw new IllegalArgumentException("time: as 2031-03-04T08:00", odd);
        }
    }

    private static String local(Instant at, ZoneId zone) {
        return LocalDateTime.ofInstant(at, zone).toString();
    }
}
