package brightseam.rest;

import java.util.List;

/**
 * What went wrong, in the form of RFC 9457.
 *
 * @param title what is wrong, in words that stay the same for the same code
 * @param status the HTTP status
 * @param detail this case in a sentence or some
 * @param code the stable name of the kind
 * @param refusals each broken rule, where rules of the shop stand against it
 * @param waitSeconds after which to try again; 0 where that would not help
 */
record Problem(String title, int status, String detail, String code, List<Refused> refusals, long waitSeconds) {

    /** One broken rule with its words, as screens say them. */
    record Refused(String code, String word, String reason, String wayOut) {}

    /** Copies the list. */
    Problem {
        refusals = List.copyOf(refusals);
    }

    static Problem of(int status, String code, String title, String detail) {
        return new Problem(title, status, detail, code, List.of(), 0);
    }

    static Problem notFound(String what) {
        return of(404, "not-found", "Not found", what);
    }

    static Problem malformed(List<String> faults) {
        return of(400, "malformed", "Not in the form", String.join(" ", faults));
    }

    /** Thrown where an answer is a problem. */
    static final class Thrown extends RuntimeException {

        private static final long serialVersionUID = 1;
        private final transient Problem problem;

        Thrown(Problem problem) {
            super(problem.code());
            this.problem = problem;
        }

        Problem problem() {
            return problem;
        }
    }
}
