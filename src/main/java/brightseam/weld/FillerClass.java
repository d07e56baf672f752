package brightseam.weld;

import java.util.Arrays;
import java.util.Optional;

/**
 * Filler classes of AWS A5.16. That ERTi-9 belongs to grade 9 is in its 1990 edition, table A1; the others are from
 * memory.
 */
public enum FillerClass {
    /** Unalloyed, softest. */
    ERTI_1("ERTi-1", "1"),
    /** Unalloyed. */
    ERTI_2("ERTi-2", "2"),
    /** Ti-6Al-4V. */
    ERTI_5("ERTi-5", "5"),
    /** Ti-3Al-2.5V. */
    ERTI_9("ERTi-9", "9"),
    /** Ti-6Al-4V, extra low interstitials. */
    ERTI_23("ERTi-23", "23");

    private final String printed;
    private final String grade;

    FillerClass(String printed, String grade) {
        this.printed = printed;
        this.grade = grade;
    }

    /** As it is printed, such as {@code ERTi-9}. */
    public String printed() {
        return printed;
    }

    /** The grade of heats that are such filler, such as {@code 9}. */
    public String grade() {
        return grade;
    }

    /** The class that is printed as {@code text}, in any case. */
    public static Optional<FillerClass> printed(String text) {
        return Arrays.stream(values()).filter(one -> one.printed.equalsIgnoreCase(text)).findFirst();
    }

    /** The class of heats of {@code grade}. */
    public static Optional<FillerClass> ofGrade(String grade) {
        return Arrays.stream(values()).filter(one -> one.grade.equals(grade)).findFirst();
    }
}
