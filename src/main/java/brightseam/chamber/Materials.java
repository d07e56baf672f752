package brightseam.chamber;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The table of materials.
 *
 * @param byKey in the order of the shared file
 */
public record Materials(Map<String, Material> byKey) {

    /** Copies the table, in its order. */
    public Materials {
        byKey = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byKey));
    }

    /** The table of {@code rows}. */
    public static Materials of(List<Material> rows) {
        Map<String, Material> byKey = new LinkedHashMap<>();
        rows.forEach(row -> byKey.put(row.key(), row));
        return new Materials(byKey);
    }

    /** The material of {@code key}; empty where the table lacks it. */
    public Optional<Material> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** Every material, in the order of the shared file. */
    public List<Material> all() {
        return List.copyOf(byKey.values());
    }

    /** What people call {@code key}; the key itself where the table lacks it. */
    public String name(String key) {
        return find(key).map(Material::name).orElse(key);
    }
}
