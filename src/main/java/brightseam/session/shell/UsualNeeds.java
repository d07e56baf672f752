package brightseam.session.shell;

import brightseam.kit.Kit;
import brightseam.kit.SetNeed;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.SharedTables;
import java.util.List;
import org.springframework.stereotype.Component;

/** What sessions need besides parts and filler: the kit's own list, else that of {@code shared/session-needs.yaml}. */
@Component
final class UsualNeeds {

    private record Table(List<Row> sessionNeeds) {}

    private record Row(String key, int count) {}

    private final List<SetNeed> usual;

    /**
     * Reads the table.
     *
     * @throws IllegalStateException where it is broken or names a type that no table of supplies has
     */
    UsualNeeds(Vocabulary vocabulary) {
        this.usual = SharedTables.table("session-needs", Table.class).sessionNeeds().stream()
                .map(row -> new SetNeed(row.key(), title(vocabulary, row.key()), row.count())).toList();
    }

    /** What the session of {@code kit} needs. */
    List<SetNeed> of(Kit kit) {
        return kit.needs().orElse(usual);
    }

    private static String title(Vocabulary vocabulary, String key) {
        Vocabulary.SupplyType type = vocabulary.supplies().get(key);
        if (type == null) {
            throw new IllegalStateException("session-needs.yaml: no type of supply " + key);
        }
        return type.name();
    }
}
