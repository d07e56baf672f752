package brightseam.seal.shell;

import brightseam.ledger.Entry;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** When an entry says that it happened: the wall time of its origin. */
final class StatedTime {

    private static final JsonMapper MAPPER = new JsonMapper();

    private StatedTime() {}

    /** Empty where it states none. */
    static Optional<Instant> of(Entry entry) {
        try {
            String wall = MAPPER.readTree(entry.json()).path("origin").path("at").path("wall").asString("");
            return wall.isEmpty() ? Optional.empty() : Optional.of(Instant.parse(wall));
        } catch (JacksonException | DateTimeException none) {
            return Optional.empty();
        }
    }
}
