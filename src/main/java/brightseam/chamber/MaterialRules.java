package brightseam.chamber;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * What may go into a chamber. Common practice: only what neither reacts with titanium nor gives off gas, so fixtures of
 * stainless steel.
 */
public final class MaterialRules {

    private MaterialRules() {}

    /** What stands against {@code item} in {@code chamber}, by name and with the reason; nothing where it may go in. */
    public static List<ChamberRefusal> objections(ChamberItem item, Chamber chamber, Materials materials) {
        if (item.material().isEmpty()) {
            return List.of(new ChamberRefusal.MaterialNotStated(item.supply(), item.title()));
        }
        String key = item.material().get();
        Optional<Material> known = materials.find(key);
        boolean good = known.filter(Material::mayBePermitted).isPresent()
                && chamber.terms().permittedMaterials().contains(key);
        return good ? List.of() : List.of(new ChamberRefusal.MaterialNotPermitted(item.supply(), item.title(),
                materials.name(key), chamber.station(), known.flatMap(MaterialRules::because)
                        .orElse("it is not on the list of this chamber")));
    }

    /** What stands against {@code keys} as the list of a chamber. */
    static List<ChamberRefusal> listed(SortedSet<String> keys, Materials materials) {
        List<ChamberRefusal> against = new ArrayList<>();
        for (String key : keys) {
            Optional<Material> known = materials.find(key);
            if (known.isEmpty()) {
                against.add(new ChamberRefusal.MaterialUnknown(key));
            }
            known.flatMap(MaterialRules::because).ifPresent(because ->
                    against.add(new ChamberRefusal.MaterialNeverPermitted(materials.name(key), because)));
        }
        return against;
    }

    /** Why no chamber takes it; empty where one may. */
    public static Optional<String> because(Material material) {
        if (material.mayBePermitted()) {
            return Optional.empty();
        }
        boolean gas = material.givesOffGas() == Material.Gas.MUCH;
        return Optional.of(!material.reactsWithTitanium() ? "it gives off much gas"
                : gas ? "it gives off much gas and reacts with titanium" : "it reacts with titanium");
    }
}
