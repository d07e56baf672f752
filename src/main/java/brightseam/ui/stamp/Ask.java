package brightseam.ui.stamp;

import brightseam.kernel.StepId;
import brightseam.procedure.Step;
import brightseam.traveller.Guide;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Reading;
import brightseam.traveller.shell.Card;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What a traveller asks of whoever reads its record.
 *
 * @param inspect what to do at the inspection point at hand, where one is: begin, hold, read or stamp
 * @param open nonconformances to decide
 * @param entries readings that may be corrected
 */
record Ask(Optional<NextAction> inspect, List<Nonconformance> open, List<Entry> entries) {

    /** A reading that counts now, of a step that counts. */
    record Entry(Step step, String reading, String label, BigDecimal current) {}

    static Ask of(Card card) {
        boolean awaits = card.next() instanceof NextAction.AwaitStamp;
        return new Ask(
                awaits ? Optional.of(Guide.inspect(card.traveller(), card.procedure())) : Optional.empty(),
                card.traveller().isInQuarantine() ? card.traveller().openNonconformances() : List.of(),
                card.traveller().hasEnded() ? List.of() : entries(card));
    }

    /** The inspection point at hand, where one is. */
    Optional<StepId> step() {
        return inspect.map(Ask::step);
    }

    /**
     * The number that somebody typed; a decimal comma is read as a point.
     *
     * @throws IllegalArgumentException where it is no number
     */
    static BigDecimal number(String typed) {
        try {
            return new BigDecimal(typed.strip().replace(',', '.').replace('−', '-'));
        } catch (NumberFormatException noNumber) {
            throw new IllegalArgumentException("a number, not \"" + typed.strip() + "\"", noNumber);
        }
    }

    private static StepId step(NextAction action) {
        return switch (action) {
            case NextAction.PutInto next -> next.step().id();
            case NextAction.CloseBin next -> next.step().id();
            case NextAction.Begin next -> next.step().id();
            case NextAction.Read next -> next.step().id();
            case NextAction.BeginHold next -> next.step().id();
            case NextAction.Holding next -> next.step().id();
            case NextAction.Sign next -> next.step().id();
            case NextAction.AwaitStamp next -> next.step().id();
            case NextAction.AwaitSession next -> next.step().id();
            case NextAction.AwaitDisposition next -> throw new IllegalStateException("no step is at hand");
            case NextAction.Ended next -> throw new IllegalStateException("no step is at hand");
        };
    }

    private static List<Entry> entries(Card card) {
        return card.procedure().steps().stream()
                .flatMap(step -> card.traveller().run(step.id()).stream().flatMap(run ->
                        step.readings().stream().flatMap(spec -> run.reading(spec.id()).map(Reading::current).stream()
                                .map(value -> new Entry(step, spec.id(), spec.label(), value)))))
                .toList();
    }
}
