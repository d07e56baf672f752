package brightseam.procedure;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One rule of sense.
 *
 * @param name what it asks for, as words parted by hyphens
 * @param check finds every place that breaks it
 */
public record Rule(String name, Check check) {

    /** Finds the breaches of one rule. */
    @FunctionalInterface
    public interface Check {
        /** Every place in {@code draft} that breaks the rule. */
        Stream<Breach> breaches(Draft draft, Vocabulary vocabulary);
    }

    /** Finds the breaches of one rule in one step. */
    @FunctionalInterface
    interface StepCheck {
        Stream<Breach> breaches(Draft draft, Vocabulary vocabulary, Draft.StepDraft step, int place);
    }

    /** Every place in {@code draft} that breaks this rule. */
    public List<Breach> check(Draft draft, Vocabulary vocabulary) {
        return check.breaches(draft, vocabulary).toList();
    }

    /** A rule about the procedure as a whole. */
    static Rule whole(String name, Check check) {
        return new Rule(name, check);
    }

    /** A rule that each step keeps or breaks. */
    static Rule eachStep(String name, StepCheck check) {
        return new Rule(name, (draft, vocabulary) -> IntStream.range(0, draft.steps().size())
                .boxed()
                .flatMap(place -> check.breaches(draft, vocabulary, draft.steps().get(place), place)));
    }

    /** No breach, or one where {@code broken}. */
    static Stream<Breach> when(boolean broken, String at, String found, String expected) {
        return broken ? Stream.of(new Breach(at, found, expected)) : Stream.empty();
    }
}
