package brightseam.rest;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The parameters of lists: read strictly, so that a misspelt filter does not answer everything. */
final class Pages {

    static final int LIMIT_USUAL = 50;
    static final int LIMIT_MAX = 200;

    private Pages() {}

    /**
     * Refuses parameters that a path does not have, and those given twice.
     *
     * @throws Problem.Thrown naming the first
     */
    static void only(Map<String, String[]> given, String... known) {
        given.forEach((name, values) -> {
            if (!Set.of(known).contains(name) || values.length != 1) {
                throw malformed("The parameter " + name.substring(0, Math.min(40, name.length()))
                        + " is not known here, or there twice. Known: " + String.join(", ", known) + ".");
            }
        });
    }

    /** How many at most; {@link #LIMIT_USUAL} where nothing is said. */
    static int limit(Optional<String> text) {
        int limit = text.filter(digits -> digits.matches("\\d{1,4}")).map(Integer::parseInt)
                .orElse(text.isPresent() ? 0 : LIMIT_USUAL);
        if (limit < 1 || limit > LIMIT_MAX) {
            throw malformed("limit: a whole number from 1 to " + LIMIT_MAX + ".");
        }
        return limit;
    }

    /** Refuses a text that has a wrong form. */
    static Problem.Thrown malformed(String fault) {
        return new Problem.Thrown(Problem.malformed(List.of(fault)));
    }
}
