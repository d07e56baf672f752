package brightseam.bath;

import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Mass of a metal per volume.
 *
 * @param gramsPerCubicCentimetre in g/cm3
 * @param source where the number is from
 */
public record Density(double gramsPerCubicCentimetre, String source) {

    /**
     * By grade as heats name it. Grade 23 is printed as 4.42 to 4.43 in merchants' data sheets; the others are from
     * memory: grade 2 0.163, grade 5 0.160, grade 9 0.162 lb/in3.
     */
    private static final Map<String, Density> BY_GRADE = Map.of(
            "2", new Density(4.51, "commercially pure titanium, from memory"),
            "5", new Density(4.43, "Ti-6Al-4V, from memory"),
            "9", new Density(4.48, "Ti-3Al-2.5V, from memory; agrees with a mill's printed mass of tube"),
            "23", new Density(4.43, "Ti-6Al-4V ELI, 4.42 to 4.43 in merchants' data sheets"));

    /** Refuses what no metal has: below 0.5 (lithium is 0.53) or above 23 g/cm3 (osmium is 22.6). */
    public Density {
        Quantity.between("density in g/cm3", gramsPerCubicCentimetre, 0.5, 23);
    }

    /** The density of titanium of {@code grade}, such as {@code 9}; empty where the grade is not one of these. */
    public static Optional<Density> ofGrade(String grade) {
        return Optional.ofNullable(BY_GRADE.get(grade));
    }

    /** The grades that {@link #ofGrade} knows. */
    public static SortedSet<String> grades() {
        return new TreeSet<>(BY_GRADE.keySet());
    }
}
