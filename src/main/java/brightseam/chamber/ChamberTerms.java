package brightseam.chamber;

import brightseam.kernel.Syntax;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Everything about a chamber that process control or a lead sets.
 *
 * @param volumeLitres its inside without lock and glove ports, above zero
 * @param glovePortLitres what all glove ports hold together; purged with the chamber
 * @param lock its transfer lock
 * @param flows the streams of argon
 * @param limits what the gas has to keep to
 * @param manifold where the argon comes from
 * @param usual what a kit usually asks of it
 * @param permittedMaterials keys of the table of materials that may go in
 */
public record ChamberTerms(
        BigDecimal volumeLitres,
        BigDecimal glovePortLitres,
        LockGear lock,
        ArgonFlows flows,
        ChamberLimits limits,
        Manifold manifold,
        UsualSession usual,
        SortedSet<String> permittedMaterials) {

    /** Copies the materials; refuses a chamber without volume and keys of a wrong form. */
    public ChamberTerms {
        Amounts.positive("volume of the chamber", volumeLitres);
        Amounts.notNegative("volume of the glove ports", glovePortLitres);
        permittedMaterials.forEach(key -> Syntax.slug("material", key));
        permittedMaterials = Collections.unmodifiableSortedSet(new TreeSet<>(permittedMaterials));
    }

    /** What a purge has to clear: the chamber and its glove ports, litres. */
    public BigDecimal purgedLitres() {
        return volumeLitres.add(glovePortLitres);
    }
}
