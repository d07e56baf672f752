package brightseam.ledger.shell;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Remembers the values that were last asked for, up to a number. Safe for several threads. */
final class Recent<K, V> {

    private final Map<K, V> values;

    Recent(int sizeMax) {
        this.values = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > sizeMax;
            }
        };
    }

    synchronized Optional<V> get(K key) {
        return Optional.ofNullable(values.get(key));
    }

    synchronized void put(K key, V value) {
        values.put(key, value);
    }
}
