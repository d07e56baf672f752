package brightseam.ui.bench;

import brightseam.kernel.Moment;
import brightseam.procedure.Gap;
import brightseam.procedure.Step;
import brightseam.procedure.Vocabulary;
import brightseam.traveller.NextAction;
import brightseam.traveller.Traveller;
import brightseam.traveller.Uses;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Card;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes the card of a load: everything on it in words, decided by nobody here. */
final class CardWriter {

    private final Vocabulary vocabulary;
    private final ZoneId zone;

    CardWriter(Vocabulary vocabulary, ZoneId zone) {
        this.vocabulary = vocabulary;
        this.zone = zone;
    }

    /**
     * The card of {@code load}.
     *
     * @param next what to show: the guide's answer, or the next step where somebody hurries on
     * @param ready what is confirmed and scanned for the step to begin
     */
    BenchCard write(Load load, NextAction next, MadeReady ready, Moment now) {
        Card card = load.first();
        Traveller traveller = card.traveller();
        Optional<Step> step = Load.stepOf(next);
        return new BenchCard(
                step.map(at -> line(load, at)).orElse(card.procedure().title()),
                step.map(Step::title).orElseGet(() -> headline(next, traveller)),
                step.map(Step::instruction).orElse(""),
                words(load), where(traveller), marks(card, step),
                hurry(load, step),
                new DoingWriter(vocabulary, zone, load, now).write(next, ready),
                load.apart().stream().map(CardWriter::apart).toList(),
                window(traveller, now), spent(card), also(load, step));
    }

    private static Optional<String> spent(Card card) {
        return Uses.inHand(card.traveller(), card.procedure())
                .filter(step -> card.traveller().glovesSpent())
                .flatMap(step -> Uses.gloves(card.procedure(), step))
                .map(use -> "Your gloves are spent. Put on new ones and scan their label.");
    }

    private String line(Load load, Step step) {
        return "Step " + load.number(step) + " · " + station(step);
    }

    /** What other procedures of the load say about the step, where they say something else. */
    private static List<String> also(Load load, Optional<Step> shown) {
        return shown.map(step -> load.together().stream()
                .flatMap(card -> card.procedure().find(step.id()).map(Step::instruction)
                        .filter(own -> !own.equals(step.instruction())).map(own -> card.id() + ": " + own).stream())
                .toList()).orElse(List.of());
    }

    private String station(Step step) {
        return Optional.ofNullable(vocabulary.stations().get(step.station())).map(Vocabulary.StationClass::name)
                .orElse(Wording.words(step.station())).toLowerCase(java.util.Locale.ROOT);
    }

    private static String headline(NextAction next, Traveller traveller) {
        return next instanceof NextAction.AwaitDisposition
                ? traveller.isSuspect() ? "Suspect: in quarantine" : "In quarantine" : "Nothing left to do";
    }

    static String words(Load load) {
        long pieces = load.together().stream().mapToLong(card -> card.traveller().pieces().size()).sum();
        String parts = load.together().stream().map(card -> card.traveller().part().description()).distinct()
                .collect(Collectors.joining(", "));
        return load.ids().stream().map(Object::toString).collect(Collectors.joining(", ")) + " · "
                + Words.count(pieces, "piece", "pieces") + " · " + parts + " · heat "
                + load.together().stream().map(card -> card.traveller().heat().value()).distinct()
                        .collect(Collectors.joining(", "));
    }

    private static String where(Traveller traveller) {
        String stopped = traveller.isSuspect() ? "SUSPECT · " : "";
        return stopped + traveller.placement().map(place -> "In " + Wording.words(place.binClass().name()) + " "
                + place.bin() + (place.binClass().isClean() ? place.closed() ? ", closed" : ", open" : ""))
                .orElse("In no bin yet");
    }

    private static List<BenchCard.Mark> marks(Card card, Optional<Step> now) {
        return card.procedure().steps().stream()
                .map(step -> new BenchCard.Mark(step.number(), step.title(), standing(card, step, now))).toList();
    }

    private static BenchCard.Standing standing(Card card, Step step, Optional<Step> now) {
        Traveller traveller = card.traveller();
        if (traveller.isSigned(step.id())) {
            return BenchCard.Standing.SIGNED;
        }
        if (traveller.isInQuarantine() && traveller.currentStep().filter(step.id()::equals).isPresent()) {
            return BenchCard.Standing.STOPPED;
        }
        if (now.map(Step::id).filter(step.id()::equals).isPresent()) {
            return BenchCard.Standing.NOW;
        }
        boolean undone = traveller.run(step.id()).isEmpty()
                && traveller.superseded().stream().anyMatch(run -> run.step().equals(step.id()) && run.isSigned());
        if (undone) {
            return BenchCard.Standing.SUPERSEDED;
        }
        return step.isInspectionPoint() ? BenchCard.Standing.STAMP_TO_COME : BenchCard.Standing.TO_COME;
    }

    private static Optional<BenchCard.Hurry> hurry(Load load, Optional<Step> shown) {
        return load.gap().map(gap -> {
            Step to = load.step(gap.to());
            return new BenchCard.Hurry(to.number() + " " + to.title(),
                    new Gap(gap.latest().since(gap.since()), gap.reason()), gap.since(),
                    !shown.map(Step::id).filter(to.id()::equals).isPresent()
                            && load.first().traveller().run(gap.to()).isEmpty());
        });
    }

    private static String apart(Card card) {
        String at = card.currentStep().map(step -> "stands at step " + step.number() + ", " + step.title())
                .orElse("has no step left");
        return card.id() + " " + at + ". It is not part of this load: take it out, scan " + card.id()
                + ", then the bin it goes into.";
    }

    private Optional<String> window(Traveller traveller, Moment now) {
        return traveller.window() instanceof Window.Open open
                ? Optional.of("Clean until " + Words.clockTime(
                        now.plus(open.remaining(now)).wall(), now.wall(), zone) + " if kept like this")
                : Optional.empty();
    }
}
