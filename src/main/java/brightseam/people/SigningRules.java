package brightseam.people;

import brightseam.people.SigningRefusal.NotActive;
import brightseam.people.SigningRefusal.NotQualified;
import brightseam.people.SigningRefusal.QualificationExpired;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Whether a person may sign at a station at all; the role and the stamp that a step asks for are the step's own rules.
 */
public final class SigningRules {

    private static final List<Function<SigningRequest, Stream<SigningRefusal>>> ALL = List.of(
            SigningRules::theSignerIsActive,
            SigningRules::theSignerIsQualifiedWhereTheShopAsksForIt);

    private SigningRules() {}

    /** Every rule that {@code request} breaks; empty where nothing stands against the person. */
    public static List<SigningRefusal> broken(SigningRequest request) {
        return ALL.stream().flatMap(rule -> rule.apply(request)).toList();
    }

    private static Stream<SigningRefusal> theSignerIsActive(SigningRequest request) {
        return request.person().active() ? Stream.empty() : Stream.of(new NotActive(request.person().badge()));
    }

    private static Stream<SigningRefusal> theSignerIsQualifiedWhereTheShopAsksForIt(SigningRequest request) {
        return request.work().stream()
                .filter(request.qualificationNeeded()::contains)
                .sorted()
                .flatMap(word -> qualified(request, word));
    }

    private static Stream<SigningRefusal> qualified(SigningRequest request, String word) {
        Person person = request.person();
        return person.qualifiedUntil(word)
                .map(until -> request.at().isBefore(until)
                        ? Stream.<SigningRefusal>empty()
                        : Stream.<SigningRefusal>of(new QualificationExpired(person.badge(), word, until)))
                .orElseGet(() -> Stream.of(new NotQualified(person.badge(), word)));
    }
}
