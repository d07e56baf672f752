package brightseam.traveller;

import brightseam.kernel.Limits;
import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.procedure.Mix;
import brightseam.procedure.Procedure;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Other procedures for the same line: the short one with single steps changed. */
record Steps(Procedure procedure) {

    /** The short procedure under the name {@code id}. */
    static Steps named(String id) {
        return new Steps(with(TestProcedures.tube(), id, TestProcedures.tube().steps()));
    }

    Steps changed(String step, UnaryOperator<Step> change) {
        return new Steps(with(procedure, procedure.ref().id(), procedure.steps().stream()
                .map(one -> one.id().equals(new StepId(step)) ? change.apply(one) : one).toList()));
    }

    /** Without the step named {@code step}. */
    Steps without(String step) {
        return new Steps(with(procedure, procedure.ref().id(), procedure.steps().stream()
                .filter(one -> !one.id().equals(new StepId(step))).toList()));
    }

    private static Procedure with(Procedure from, String id, List<Step> steps) {
        return new Procedure(new ProcedureRef(id, "A", from.ref().sha256()), from.title(), from.scope(),
                from.grades(), steps, from.window(), from.touchReturnsTo(), from.sources());
    }

    static UnaryOperator<Step> held(int minimumSeconds, Integer maximumSeconds) {
        return s -> made(s, s.cautions(), s.bins(), s.gloves(), Optional.of(new Hold(
                Duration.ofSeconds(minimumSeconds), Optional.ofNullable(maximumSeconds).map(Duration::ofSeconds))),
                s.gap(), s.readings(), s.mix());
    }

    static UnaryOperator<Step> gap(int seconds) {
        return s -> made(s, s.cautions(), s.bins(), s.gloves(), s.hold(),
                Optional.of(new Gap(Duration.ofSeconds(seconds), "dries")), s.readings(), s.mix());
    }

    static UnaryOperator<Step> worn(String gloves) {
        return s -> made(s, s.cautions(), s.bins(), Optional.ofNullable(gloves), s.hold(), s.gap(), s.readings(),
                s.mix());
    }

    static UnaryOperator<Step> cautious(String... cautions) {
        return s -> made(s, List.of(cautions), s.bins(), s.gloves(), s.hold(), s.gap(), s.readings(), s.mix());
    }

    static UnaryOperator<Step> in(BinClass... bins) {
        return s -> made(s, s.cautions(), Set.of(bins), s.gloves(), s.hold(), s.gap(), s.readings(), s.mix());
    }

    static UnaryOperator<Step> mixed(Mix mix) {
        return s -> made(s, s.cautions(), s.bins(), s.gloves(), s.hold(), s.gap(), s.readings(), mix);
    }

    /** With the limits of its first reading. */
    static UnaryOperator<Step> read(String low, String high, int decimals) {
        return s -> made(s, s.cautions(), s.bins(), s.gloves(), s.hold(), s.gap(), List.of(new ReadingSpec(
                s.readings().getFirst().id(), s.readings().getFirst().label(), s.readings().getFirst().unit(),
                new Limits(Optional.of(new BigDecimal(low)), Optional.of(new BigDecimal(high))), decimals,
                s.readings().getFirst().beforeHold())), s.mix());
    }

    static UnaryOperator<Step> instructed(String instruction) {
        return s -> new Step(s.id(), s.number(), s.title(), s.kind(), s.station(), instruction, s.cautions(), s.bins(),
                s.gloves(), s.needs(), s.uses(), s.hold(), s.gap(), s.readings(), s.signedBy(), s.reworkTo(),
                s.sources(), s.mix(), s.inSession());
    }

    private static Step made(Step s, List<String> cautions, Set<BinClass> bins, Optional<String> gloves,
            Optional<Hold> hold, Optional<Gap> gap, List<ReadingSpec> readings, Mix mix) {
        return new Step(s.id(), s.number(), s.title(), s.kind(), s.station(), s.instruction(), cautions, bins, gloves,
                s.needs(), s.uses(), hold, gap, readings, s.signedBy(), s.reworkTo(), s.sources(), mix, s.inSession());
    }
}
