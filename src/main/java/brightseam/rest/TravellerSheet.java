package brightseam.rest;

import brightseam.kernel.Moment;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.traveller.Missing;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Reading;
import brightseam.traveller.Signature;
import brightseam.traveller.StepRun;
import brightseam.traveller.Traveller;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Card;
import brightseam.ui.board.MissingWords;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A traveller as other systems read it. Component names are the names in the answer, with underscores. */
final class TravellerSheet {

    private TravellerSheet() {}

    /** What every list says of one. */
    record Summary(String id, Optional<String> parent, String kit, Part part, List<Integer> pieces, String heat,
            Followed procedure, Instant releasedAt, String phase, boolean ready, boolean quarantined, boolean suspect,
            Optional<StepName> currentStep, List<Lacking> missing, List<String> missingWords, CleanWindow cleanWindow,
            Optional<InBin> bin, long version) {}

    /** All of one. */
    record Whole(Summary summary, List<Run> steps, List<Finding> nonconformances) {}

    /** What the pieces are. */
    record Part(String partNumber, String description, String drawingRevision) {}

    /** The revision that it follows to its end. */
    record Followed(String id, String revision, String sha256) {}

    /** A step by name. */
    record StepName(String id, String title) {}

    /** One part of ready that it lacks. */
    record Lacking(String code, Optional<StepName> step) {}

    /** The clean window; {@code closesAt} holds while the pieces stay as they are kept now. */
    record CleanWindow(String state, Optional<Instant> openedAt, Optional<Instant> closesAt, Optional<String> kept,
            Optional<Instant> endedAt, Optional<String> endedBy) {}

    /** The bin that the pieces are in. */
    record InBin(String id, String binClass, boolean closed) {}

    /** One passage through one step. */
    record Run(String step, String title, int pass, boolean superseded, Instant startedAt, String startedBy,
            Optional<String> station, List<String> loadWith, Optional<Instant> holdBegunAt,
            Optional<Instant> holdEndedAt, List<Measured> readings, Optional<Signed> signature) {}

    /** One value; {@code value} is what counts now, {@code firstValue} what was written before a correction. */
    record Measured(String id, String label, String unit, BigDecimal value, boolean inLimits, Instant readAt,
            String readBy, Optional<BigDecimal> firstValue, Optional<String> correctedBecause) {}

    /** A signature. */
    record Signed(Instant signedAt, String meaning, String badge, String name, Optional<String> stamp,
            List<String> roles, String factors) {}

    /** A nonconformance. */
    record Finding(int number, String cause, String step, int pass, List<Integer> pieces, String text,
            Instant openedAt, boolean open, Optional<Decided> disposition) {}

    /** What was decided of it. */
    record Decided(String disposition, String reason, Signed signature) {}

    static Summary summary(Card card, Moment now) {
        Traveller traveller = card.traveller();
        return new Summary(traveller.id().value(), traveller.parent().map(Object::toString), traveller.kit().value(),
                new Part(traveller.part().partNumber(), traveller.part().description(),
                        traveller.part().drawingRevision()),
                traveller.pieces(), traveller.heat().value(),
                new Followed(traveller.procedure().id(), traveller.procedure().revision(),
                        traveller.procedure().sha256()),
                traveller.releasedAt().wall(), word(traveller.phase()), card.isReady(now),
                traveller.isInQuarantine(), traveller.isSuspect(), card.currentStep().map(TravellerSheet::name),
                card.missing(now).stream().map(missing -> lacking(card, missing)).toList(),
                MissingWords.shortly(card, now), window(traveller.window()),
                traveller.placement().map(where -> new InBin(
                        where.bin().value(), word(where.binClass()), where.closed())),
                card.version());
    }

    static Whole whole(Card card, Moment now) {
        Traveller traveller = card.traveller();
        List<Run> steps = Stream.concat(
                traveller.superseded().stream().map(run -> run(card, run, true)),
                traveller.route().stream().flatMap(step -> traveller.run(step).stream())
                        .map(run -> run(card, run, false))).toList();
        return new Whole(summary(card, now), steps,
                traveller.nonconformances().stream().map(TravellerSheet::finding).toList());
    }

    private static Lacking lacking(Card card, Missing missing) {
        return switch (missing) {
            case Missing.StepNotSigned step -> new Lacking("step-not-signed", of(card, step.step()));
            case Missing.NotStamped step -> new Lacking("not-stamped", of(card, step.step()));
            case Missing.Quarantine stopped -> new Lacking("quarantine", Optional.empty());
            case Missing.NoWindow none -> new Lacking("no-clean-window", Optional.empty());
            case Missing.TooLittleWindow little -> new Lacking("too-little-clean-window", Optional.empty());
            case Missing.NotInCleanBin bin -> new Lacking("not-in-clean-bin", Optional.empty());
            case Missing.BinOpen open -> new Lacking("bin-open", Optional.empty());
        };
    }

    private static Optional<StepName> of(Card card, brightseam.kernel.StepId step) {
        return Optional.of(name(card.procedure().step(step)));
    }

    private static StepName name(Step step) {
        return new StepName(step.id().value(), step.title());
    }

    private static CleanWindow window(Window window) {
        return switch (window) {
            case Window.NotOpen none -> new CleanWindow("not-open", Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(), Optional.empty());
            case Window.Open open -> new CleanWindow("open", Optional.of(open.openedAt().wall()),
                    Optional.of(open.since().wall().plus(open.remaining(open.since()))),
                    Optional.of(word(open.handling())), Optional.empty(), Optional.empty());
            case Window.Ended ended -> new CleanWindow("ended", Optional.empty(), Optional.empty(), Optional.empty(),
                    Optional.of(ended.at().wall()), Optional.of(word(ended.why())));
        };
    }

    private static Run run(Card card, StepRun run, boolean superseded) {
        Step step = card.procedure().step(run.step());
        return new Run(run.step().value(), step.title(), run.pass(), superseded, run.startedAt().wall(),
                run.startedBy().value(), run.station().map(Object::toString),
                run.loadWith().stream().map(Object::toString).toList(), run.holdBegunAt().map(Moment::wall),
                run.holdEndedAt().map(Moment::wall),
                run.readings().stream().map(reading -> measured(step, reading)).toList(),
                run.signature().map(mark -> signed(run.signedAt().orElseThrow().wall(), mark)));
    }

    private static Measured measured(Step step, Reading reading) {
        Optional<ReadingSpec> spec = step.readings().stream().filter(one -> one.id().equals(reading.id())).findFirst();
        return new Measured(reading.id(), spec.map(ReadingSpec::label).orElse(reading.id()),
                spec.map(ReadingSpec::unit).orElse(""), reading.current(), reading.currentInLimits(),
                reading.at().wall(), reading.by().value(), reading.correction().map(any -> reading.value()),
                reading.correction().map(Reading.Correction::reason));
    }

    private static Signed signed(Instant at, Signature mark) {
        return new Signed(at, word(mark.meaning()), mark.signer().badge().value(), mark.signer().name(),
                mark.signer().stamp(), mark.signer().roles().stream().map(TravellerSheet::word).toList(),
                mark.signer().factors());
    }

    private static Finding finding(Nonconformance found) {
        return new Finding(found.number(), word(found.cause()), found.step().value(), found.pass(), found.pieces(),
                found.text(), found.openedAt().wall(), found.isOpen(), found.decision().map(decided -> new Decided(
                        word(decided.disposition()), decided.reason(),
                        signed(decided.at().wall(), decided.signature()))));
    }

    /** A word of the program as answers have it: lower case, with hyphens. */
    static String word(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
