package brightseam.chamber.shell;

import brightseam.chamber.Material;
import brightseam.chamber.Materials;
import brightseam.procedure.shell.SharedTables;
import java.util.List;
import java.util.Locale;

/** Reads {@code shared/chamber-materials.yaml}. */
final class MaterialTable {

    private record Table(List<Row> chamberMaterials) {}

    private record Row(String key, String name, String givesOffGas, boolean reactsWithTitanium, String note) {}

    private MaterialTable() {}

    /**
     * The table.
     *
     * @throws IllegalStateException naming file, line and column where it is broken
     */
    static Materials read() {
        return Materials.of(SharedTables.table("chamber-materials", Table.class).chamberMaterials().stream()
                .map(row -> new Material(row.key(), row.name(),
                        Material.Gas.valueOf(row.givesOffGas().toUpperCase(Locale.ROOT)), row.reactsWithTitanium(),
                        row.note()))
                .toList());
    }
}
