package brightseam.evidence;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Tells entries in words from nothing but their own text, so that a person can hold them against the paper. An event of
 * a kind that is not known here is told by its members, so that none is left out.
 */
final class FactLines {

    /** Told in its own place, or of no use on paper. */
    private static final Set<String> APART = Set.of("origin", "signature", "history", "step", "load_with");
    private static final int DEPTH_MAX = 2;
    private static final int LENGTH_MAX = 600;
    private static final int HASH_SHOWN = 16;

    private FactLines() {}

    static List<FactLine> of(List<ReadEntry> own, Heads heads) {
        List<FactLine> lines = new ArrayList<>();
        for (ReadEntry read : own) {
            String number = String.valueOf(read.entry().version());
            Optional<Instant> before = heads.notYetAt(read.entry().position());
            Optional<Instant> inBy = heads.inBy(read.entry().position());
            history(lines, number, read.content(), inBy);
            lines.add(new FactLine(number, read.entry().type(), at(read.content()),
                    what(read.entry().type(), read.content()), signer(read.content()), before, inBy));
        }
        return lines;
    }

    /** What a lot that was set apart lived through before, under its parent's label. */
    private static void history(List<FactLine> lines, String number, Json content, Optional<Instant> inBy) {
        int count = 0;
        for (Json told : content.values("history")) {
            count++;
            String type = told.text("type").orElse("event");
            Json event = told.at("event").orElse(new Json.Nothing());
            history(lines, number + "/" + count, event, inBy);
            lines.add(new FactLine(number + "/" + count, type, at(event), what(type, event), signer(event),
                    Optional.empty(), inBy));
        }
    }

    private static Optional<Instant> at(Json content) {
        try {
            return content.text("origin", "at", "wall").map(Instant::parse);
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }

    private static Optional<String> signer(Json content) {
        return content.text("signature", "signer", "name");
    }

    private static String what(String type, Json content) {
        StringBuilder what = new StringBuilder();
        content.text("step").ifPresent(step -> what.append(step).append(": "));
        what.append(words(type));
        content.at("signature").ifPresent(signature -> what.append(" ").append(signature(signature)));
        List<String> told = new ArrayList<>();
        if (content instanceof Json.Members members) {
            members.of().forEach((name, value) -> {
                if (!APART.contains(name)) {
                    tell(told, name, value, 1);
                }
            });
        }
        if (!told.isEmpty()) {
            what.append("; ").append(String.join(", ", told));
        }
        boolean signed = content.at("signature").isPresent();
        content.text("origin", "by").filter(by -> !signed).ifPresent(by -> what.append("; by ").append(by));
        return what.length() <= LENGTH_MAX ? what.toString() : what.substring(0, LENGTH_MAX) + "…";
    }

    private static void tell(List<String> told, String name, Json value, int depth) {
        switch (value) {
            case Json.Members members when depth <= DEPTH_MAX -> members.of().forEach((inner, of) ->
                    tell(told, name.equals(inner) ? name : name + " " + inner, of, depth + 1));
            case Json.Members members -> told.add(words(name) + " …");
            case Json.Values values when values.of().stream().allMatch(one -> one.plain().isPresent()) -> {
                if (!values.of().isEmpty()) {
                    told.add(words(name) + " " + values.of().stream().map(one -> shown(one.plain().orElse("")))
                            .collect(Collectors.joining(" ")));
                }
            }
            case Json.Values values -> told.add(values.of().size() + " " + words(name));
            case Json.Nothing nothing -> { }
            case Json.Text text -> told.add(words(name) + " " + shown(text.value()));
            case Json.Number number -> told.add(words(name) + " " + number.written());
            case Json.Truth truth -> told.add(name.equals("in_limits")
                    ? truth.value() ? "in limits" : "OUT OF LIMITS"
                    : words(name) + " " + (truth.value() ? "yes" : "no"));
        }
    }

    private static String signature(Json signature) {
        String stamp = signature.text("signer", "stamp").map(number -> ", stamp " + number).orElse("");
        String roles = signature.values("signer", "roles").stream().flatMap(role -> role.plain().stream())
                .map(FactLines::words).collect(Collectors.joining(" and "));
        return "by " + signature.text("signer", "name").orElse("nobody") + " ("
                + signature.text("signer", "badge").orElse("no badge") + stamp
                + (roles.isEmpty() ? "" : ", " + roles) + ") – "
                + meaning(signature.text("meaning").orElse("no meaning"));
    }

    /** In the words of the printed record. */
    private static String meaning(String code) {
        return Map.of("PERFORMED", "performed as written", "INSPECTED", "inspected and accepted",
                "REJECTED", "inspected and rejected", "DISPOSITIONED", "decided the disposition",
                "CORRECTED", "corrected the entry", "SEPARATED", "set pieces apart",
                "SUSPECTED", "put it under suspicion", "STATED_LATE", "stated that it was done earlier")
                .getOrDefault(code, words(code));
    }

    private static String words(String code) {
        return code.replaceFirst("\\.\\d+$", "").replace('-', ' ').replace('_', ' ').toLowerCase(Locale.ROOT);
    }

    private static String shown(String text) {
        return text.matches("[0-9a-f]{64}") ? text.substring(0, HASH_SHOWN) + "…" : text;
    }
}
