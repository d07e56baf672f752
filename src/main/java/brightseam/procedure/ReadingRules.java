package brightseam.procedure;

import static brightseam.procedure.Rule.when;

import brightseam.procedure.Draft.ReadingDraft;
import brightseam.procedure.Draft.StepDraft;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rules about readings: their names, limits and decimals. */
final class ReadingRules {

    private ReadingRules() {}

    static Stream<Breach> readingNamesAreUnique(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (reading, at) -> when(
                step.readings().stream().takeWhile(other -> other != reading)
                        .anyMatch(other -> other.id().equals(reading.id())),
                at + "/id", "a second reading named " + reading.id(), "a name that no other reading of the step has"));
    }

    static Stream<Breach> aReadingHasRoom(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (reading, at) -> reading.minimum().stream().flatMap(minimum ->
                reading.maximum().stream().flatMap(maximum -> when(maximum.compareTo(minimum) < 0, at + "/maximum",
                        "a maximum of " + plain(maximum) + " under a minimum of " + plain(minimum),
                        "a maximum that is not below the minimum"))));
    }

    static Stream<Breach> aLookHasNoNumbers(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (reading, at) -> when(
                reading.isPassFail() && (reading.minimum().isPresent() || reading.maximum().isPresent()
                        || reading.decimals().filter(decimals -> decimals > 0).isPresent()),
                at + "/unit", "limits or decimals on a look", "a pass-fail reading without them, or a unit"));
    }

    static Stream<Breach> limitsFitTheKeyPad(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return eachLimit(step, place, (reading, limit, at) -> when(
                limit.stripTrailingZeros().scale() > reading.decimals().orElse(0), at,
                "a limit of " + plain(limit) + " for a reading with " + reading.decimals().orElse(0) + " decimals",
                "as many decimals as the limit has"));
    }

    static Stream<Breach> limitsArePossible(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return eachLimit(step, place, (reading, limit, at) -> Stream.ofNullable(vocabulary.units().get(reading.unit()))
                .flatMap(unit -> when(
                        unit.lowest().filter(lowest -> limit.compareTo(lowest) < 0).isPresent()
                                || unit.highest().filter(highest -> limit.compareTo(highest) > 0).isPresent(),
                        at, "a limit of " + plain(limit) + " " + unit.symbol(), "a possible value: " + range(unit))));
    }

    static Stream<Breach> aReadingBeforeAHoldHasOne(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (reading, at) -> when(
                reading.beforeHold().orElse(false) && step.hold().isEmpty(), at + "/before_hold",
                "a reading before a hold that " + step.id() + " does not have", "false, or a hold"));
    }

    private interface ReadingCheck {
        Stream<Breach> breaches(ReadingDraft reading, String at);
    }

    private interface LimitCheck {
        Stream<Breach> breaches(ReadingDraft reading, BigDecimal limit, String at);
    }

    private static Stream<Breach> each(StepDraft step, int place, ReadingCheck check) {
        return IntStream.range(0, step.readings().size())
                .boxed()
                .flatMap(i -> check.breaches(step.readings().get(i), "/steps/" + place + "/readings/" + i));
    }

    private static Stream<Breach> eachLimit(StepDraft step, int place, LimitCheck check) {
        return each(step, place, (reading, at) -> Stream.concat(
                of(reading, reading.minimum(), at + "/minimum", check),
                of(reading, reading.maximum(), at + "/maximum", check)));
    }

    private static Stream<Breach> of(ReadingDraft reading, Optional<BigDecimal> limit, String at, LimitCheck check) {
        return reading.isPassFail()
                ? Stream.empty()
                : limit.stream().flatMap(value -> check.breaches(reading, value, at));
    }

    private static String plain(BigDecimal value) {
        return value.toPlainString();
    }

    private static String range(Vocabulary.Unit unit) {
        String low = unit.lowest().map(lowest -> "not below " + plain(lowest)).orElse("");
        String high = unit.highest().map(highest -> " and not above " + plain(highest)).orElse("");
        return low + high;
    }
}
