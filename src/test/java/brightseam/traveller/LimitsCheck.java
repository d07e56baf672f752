package brightseam.traveller;

import brightseam.kernel.StepId;
import brightseam.procedure.Procedure;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Of a record that is read by {@link RecordCheck}: that readings were judged by their limits, and none was missing. */
final class LimitsCheck {

    private final Procedure procedure;
    private final Map<String, Boolean> inLimits = new HashMap<>();
    private final Set<StepId> told = new HashSet<>();

    LimitsCheck(Procedure procedure) {
        this.procedure = procedure;
    }

    /** Whether the value was judged as its limits say. */
    boolean isJudgedRightly(TravellerEvent.ReadingTaken e) {
        return isJudgedRightly(e.step(), e.reading(), e.value(), e.inLimits());
    }

    boolean isJudgedRightly(TravellerEvent.ReadingCorrected e) {
        return isJudgedRightly(e.step(), e.reading(), e.to(), e.inLimits());
    }

    private boolean isJudgedRightly(StepId step, String reading, BigDecimal value, boolean said) {
        ReadingSpec spec = procedure.step(step).readings().stream()
                .filter(one -> one.id().equals(reading)).findFirst().orElseThrow();
        boolean high = spec.limits().maximum().filter(most -> value.compareTo(most) > 0).isPresent();
        boolean low = spec.limits().minimum().filter(least -> value.compareTo(least) < 0).isPresent();
        inLimits.put(step + "/" + reading, said);
        return said == !(high || low);
    }

    /** A nonconformance says that a reading of {@code step} was out. */
    void tell(StepId step) {
        told.add(step);
    }

    /** Whether what is read before the hold of {@code step} was read and in order. */
    boolean mayHold(Step step) {
        return step.readings().stream().filter(ReadingSpec::beforeHold)
                .allMatch(spec -> Boolean.TRUE.equals(inLimits.get(step.id() + "/" + spec.id())));
    }

    /** Whether every reading of {@code step} was taken. */
    boolean isRead(Step step) {
        return step.readings().stream().allMatch(spec -> inLimits.containsKey(step.id() + "/" + spec.id()));
    }

    /** Whether a reading of {@code step} was out of limits and nobody was told. */
    boolean isOutInSilence(Step step) {
        return !told.contains(step.id()) && step.readings().stream()
                .anyMatch(spec -> Boolean.FALSE.equals(inLimits.get(step.id() + "/" + spec.id())));
    }

    /** A return undid {@code step}. */
    void forget(StepId step) {
        told.remove(step);
        inLimits.keySet().removeIf(key -> key.startsWith(step + "/"));
    }
}
