package brightseam.device.shell;

import brightseam.kernel.SupplyId;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a device sent, in the form of {@code shared/schemas/readings.schema.json}.
 *
 * @param sentAt what the device's clock said when it sent
 * @param batch what the device calls this message, so that one that is sent again is not taken twice
 * @param items the readings, at least one
 */
record FeedMessage(Optional<Instant> sentAt, Optional<String> batch, List<Item> items) {

    static final int READINGS_MAX = 10_000;
    static final Duration AGE_MAX = Duration.ofDays(1);
    private static final int BATCH_LENGTH_MAX = 64;
    private static final int FAULTS_MAX = 5;
    private static final Set<String> MESSAGE = Set.of("batch", "sent_at", "readings");
    private static final Set<String> READING = Set.of("meter", "value", "at", "age_ms");
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    /**
     * One reading.
     *
     * @param meter empty where the device has one meter only
     * @param age how old it was when it was sent
     */
    record Item(Optional<SupplyId> meter, double value, Duration age) {}

    /** A message that is not in that form, with what is wrong, at most five sentences. */
    static final class Malformed extends Exception {
        private final transient List<String> faults;

        Malformed(List<String> faults) {
            super(String.join(" ", faults));
            this.faults = List.copyOf(faults);
        }

        List<String> faults() {
            return faults;
        }
    }

    /** Reads {@code body}; see {@link Malformed} for what comes of one that is not in the form. */
    static FeedMessage read(byte[] body) throws Malformed {
        JsonNode root;
        try {
            root = MAPPER.readTree(body);
        } catch (JacksonException broken) {
            throw new Malformed(List.of("This is not JSON: " + broken.getOriginalMessage() + "."));
        }
        if (root == null || !root.isObject()) {
            throw new Malformed(List.of("A JSON object is expected."));
        }
        return new Reader().message(root);
    }

    /** Collects what is wrong while it reads. */
    private static final class Reader {
        private final List<String> faults = new ArrayList<>();

        FeedMessage message(JsonNode root) throws Malformed {
            boolean several = root.has("readings");
            Optional<Instant> sentAt = instant(root.get("sent_at"), "sent_at");
            List<Item> items = several ? items(root.get("readings"), sentAt)
                    : List.of(item(root, "the reading", sentAt));
            unknown(root, several ? MESSAGE : union(), "the message");
            Optional<String> batch = batch(root.get("batch"));
            if (!faults.isEmpty()) {
                throw new Malformed(faults.subList(0, Math.min(FAULTS_MAX, faults.size())));
            }
            return new FeedMessage(sentAt, batch, items);
        }

        private List<Item> items(JsonNode list, Optional<Instant> sentAt) {
            if (!list.isArray() || list.isEmpty() || list.size() > READINGS_MAX) {
                faults.add("readings: a list of 1 to " + READINGS_MAX + " readings is expected.");
                return List.of();
            }
            List<Item> items = new ArrayList<>(list.size());
            for (int i = 0; i < list.size() && faults.size() < FAULTS_MAX; i++) {
                String where = "readings[" + i + "]";
                if (list.get(i).isObject()) {
                    items.add(item(list.get(i), where, sentAt));
                    unknown(list.get(i), READING, where);
                } else {
                    faults.add(where + ": an object is expected.");
                }
            }
            return items;
        }

        private Item item(JsonNode node, String where, Optional<Instant> sentAt) {
            JsonNode value = node.get("value");
            if (value == null || !value.isNumber() || !Double.isFinite(value.doubleValue())) {
                faults.add(where + ": value is missing or no number.");
            }
            return new Item(meter(node.get("meter"), where), value == null ? 0 : value.doubleValue(0),
                    age(node, where, sentAt));
        }

        private Duration age(JsonNode node, String where, Optional<Instant> sentAt) {
            Optional<Instant> at = instant(node.get("at"), where + ".at");
            JsonNode millis = node.get("age_ms");
            if (at.isPresent() && (sentAt.isEmpty() || millis != null)) {
                faults.add(where + ": with at goes sent_at of the message, and no age_ms.");
                return Duration.ZERO;
            }
            if (millis != null && !millis.isIntegralNumber()) {
                faults.add(where + ": age_ms is a whole number of milliseconds.");
                return Duration.ZERO;
            }
            Duration age = millis != null ? Duration.ofMillis(millis.longValue())
                    : at.map(taken -> Duration.between(taken, sentAt.orElseThrow())).orElse(Duration.ZERO);
            if (age.isNegative() || age.compareTo(AGE_MAX) > 0) {
                faults.add(where + ": taken before it was sent, by at most a day.");
            }
            return age;
        }

        private Optional<SupplyId> meter(JsonNode node, String where) {
            try {
                return node == null ? Optional.empty() : Optional.of(new SupplyId(node.stringValue("")));
            } catch (IllegalArgumentException refused) {
                faults.add(where + ": meter is a label such as G-0601.");
                return Optional.empty();
            }
        }

        private Optional<Instant> instant(JsonNode node, String where) {
            try {
                return node == null ? Optional.empty() : Optional.of(Instant.parse(node.asString("")));
            } catch (DateTimeParseException refused) {
                faults.add(where + ": a time such as 2031-03-04T08:00:00.250Z is expected.");
                return Optional.empty();
            }
        }

        private Optional<String> batch(JsonNode node) {
            if (node == null) {
                return Optional.empty();
            }
            String name = node.isString() ? node.asString() : "";
            if (name.isEmpty() || name.length() > BATCH_LENGTH_MAX) {
                faults.add("batch: a text of 1 to " + BATCH_LENGTH_MAX + " characters is expected.");
            }
            return Optional.of(name);
        }

        private void unknown(JsonNode node, Set<String> known, String where) {
            node.propertyNames().stream().filter(name -> !known.contains(name)).limit(1).forEach(name -> faults.add(
                    where + ": " + name.substring(0, Math.min(40, name.length())) + " is not known here."));
        }

        private static Set<String> union() {
            return Set.of("batch", "sent_at", "meter", "value", "at", "age_ms");
        }
    }
}
