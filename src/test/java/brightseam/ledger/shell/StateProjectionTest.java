package brightseam.ledger.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class StateProjectionTest {

    private record Sawn(int pieces) {}

    /** One number for each identity, in a map. */
    private static final class Counts implements StateRows<Map.Entry<String, Integer>> {
        private final Map<String, Integer> counts = new TreeMap<>();

        @Override
        public List<String> tables() {
            return List.of("count_row");
        }

        @Override
        public Optional<Map.Entry<String, Integer>> find(String identity) {
            return Optional.ofNullable(counts.get(identity)).map(count -> Map.entry(identity, count));
        }

        @Override
        public void put(Optional<Map.Entry<String, Integer>> before, Map.Entry<String, Integer> after, long position) {
            counts.put(after.getKey(), after.getValue());
        }
    }

    private final Counts counts = new Counts();
    private final Projection projection = new StateProjection<>(
            new StreamKind<Map.Entry<String, Integer>, Sawn>(
                    "rack",
                    new EventCodec<>(Map.of("sawn.1", Sawn.class)),
                    (before, event) -> Map.entry("R-1", before.map(Map.Entry::getValue).orElse(0) + event.pieces())),
            counts);

    @Test
    void rows_follow_the_fold() {
        projection.apply(entry("rack/R-1", "sawn.1"));
        projection.apply(entry("rack/R-1", "sawn.1"));
        assertEquals(Map.of("R-1", 4), counts.counts);
    }

    @Test
    void events_of_other_families_are_not_its_own_whatever_they_are_called() {
        projection.apply(entry("saw/R-1", "sawn.1"));
        projection.apply(entry("rack/R-1", "sawn.2"));
        assertEquals(Map.of(), counts.counts);
    }

    private static Entry entry(String stream, String type) {
        return new Entry(1, new StreamName(stream), 1, type, "{\"pieces\":2}", "", "");
    }
}
