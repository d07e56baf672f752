package brightseam.ui.stamp;

import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Step;
import brightseam.report.Phrases;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.StepRun;
import brightseam.traveller.Traveller;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Card;
import java.time.Duration;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One traveller that waits for an inspector.
 *
 * @param id its label
 * @param part what the pieces are
 * @param what what is asked for, in words
 * @param why the reason, in words
 * @param since since when it waits
 * @param windowLeft what is left of an open clean window
 */
record Waiting(TravellerId id, String part, String what, String why, Moment since, Optional<Duration> windowLeft) {

    private static final Comparator<Waiting> URGENT_FIRST = Comparator
            .comparing((Waiting row) -> row.windowLeft.isEmpty())
            .thenComparing(row -> row.windowLeft.orElse(Duration.ZERO))
            .thenComparing(Waiting::since).thenComparing(Waiting::id);

    /** All that wait: what runs out first at the top, then what waits longest. */
    static List<Waiting> among(Collection<Card> cards, Moment now) {
        return cards.stream().flatMap(card -> of(card, now).stream()).sorted(URGENT_FIRST).toList();
    }

    /** Whether and for what {@code card} waits. */
    static Optional<Waiting> of(Card card, Moment now) {
        Traveller traveller = card.traveller();
        if (traveller.isInQuarantine()) {
            return Optional.of(disposition(card, traveller.openNonconformances(), now));
        }
        return card.next() instanceof NextAction.AwaitStamp stamp
                ? Optional.of(stamp(card, stamp.step(), now)) : Optional.empty();
    }

    private static Waiting disposition(Card card, List<Nonconformance> open, Moment now) {
        Nonconformance first = open.getFirst();
        String more = open.size() > 1 ? " and " + (open.size() - 1) + " more" : "";
        Step step = card.procedure().step(first.step());
        return row(card, "Disposition of nonconformance " + first.number() + more,
                "Step " + step.number() + " " + step.title() + ": " + Phrases.cause(first.cause()) + ", "
                        + Phrases.pieces(first.pieces())
                        + (first.cause() == Nonconformance.Cause.SUSPECT ? ". " + first.text() : "") + ".",
                first.openedAt(), now);
    }

    private static Waiting stamp(Card card, Step step, Moment now) {
        Traveller traveller = card.traveller();
        Moment since = traveller.runs().values().stream().map(StepRun::signedAt).flatMap(Optional::stream)
                .max(Comparator.naturalOrder()).orElse(traveller.releasedAt());
        boolean last = card.procedure().steps().getLast().equals(step);
        return row(card, "Stamp for step " + step.number() + " " + step.title(),
                last ? "Everything else is signed; your stamp closes the traveller."
                        : "Everything before it is signed; nothing goes on without your stamp.", since, now);
    }

    private static Waiting row(Card card, String what, String why, Moment since, Moment now) {
        Optional<Duration> left = card.traveller().window() instanceof Window.Open open
                ? Optional.of(open.remaining(now)) : Optional.empty();
        return new Waiting(card.id(), card.traveller().part().description() + ", "
                + Phrases.pieces(card.traveller().pieces()), what, why, since, left);
    }
}
