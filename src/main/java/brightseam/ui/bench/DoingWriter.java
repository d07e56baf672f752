package brightseam.ui.bench;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Moment;
import brightseam.procedure.BinClass;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.procedure.Use;
import brightseam.procedure.Vocabulary;
import brightseam.report.FindingWords;
import brightseam.report.Phrases;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Phase;
import brightseam.traveller.Reading;
import brightseam.traveller.StepRun;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes the one thing to do. */
final class DoingWriter {

    private final Vocabulary vocabulary;
    private final ZoneId zone;
    private final Load load;
    private final Moment now;

    DoingWriter(Vocabulary vocabulary, ZoneId zone, Load load, Moment now) {
        this.vocabulary = vocabulary;
        this.zone = zone;
        this.load = load;
        this.now = now;
    }

    Doing write(NextAction next, MadeReady ready) {
        return switch (next) {
            case NextAction.PutInto put -> new Doing.PutInto(
                    "Put the pieces into a " + or(put.classes()) + " and scan its label.", put.classes());
            case NextAction.CloseBin close -> close(close);
            case NextAction.Begin begin -> start(begin.step(), ready);
            case NextAction.Read read -> reading(read);
            case NextAction.BeginHold begin -> new Doing.BeginHold(intoIt(begin.step()), "The clock starts now");
            case NextAction.Holding hold -> holding(hold);
            case NextAction.Sign sign -> new Doing.Sign(signed(sign.step()), meaning(sign.step()));
            case NextAction.AwaitStamp stamp -> new Doing.Wait("Waits for a stamp", List.of(
                    "Bring the pieces to the inspector. Nothing goes on before the stamp.", where()));
            case NextAction.AwaitSession inside -> inSession(inside.step());
            case NextAction.AwaitDisposition stopped -> stopped(stopped.open());
            case NextAction.Ended ended -> new Doing.Wait(
                    ended.phase() == Phase.SCRAPPED ? "Scrapped" : "Closed", List.of("Every step has its mark."));
        };
    }

    private Doing inSession(Step step) {
        return new Doing.Wait("Goes on in the chamber's session", step.kind() == StepKind.PASS_IN
                ? List.of("Bring the pieces to the chamber. They are passed in on the session's screen.", where())
                : List.of(step.title() + " is begun, watched and signed on the session's screen."
                        + " Nothing is done here."));
    }

    private Doing close(NextAction.CloseBin close) {
        boolean bag = close.binClass() == BinClass.SEALED_BAG;
        return new Doing.Close(bag ? "Press the air out and seal " + close.bin() + "."
                : "Put the lid on " + close.bin() + ".", close.bin(), bag ? "Sealed" : "Lid is on");
    }

    private Doing start(Step step, MadeReady ready) {
        Optional<Vocabulary.StationClass> station = Optional.ofNullable(vocabulary.stations().get(step.station()));
        List<Vocabulary.Caution> cautions = step.cautions().stream().map(vocabulary.cautions()::get)
                .filter(Objects::nonNull).toList();
        List<Use> asked = load.asked(step);
        Optional<String> confirm = Optional.of(confirmation(step, asked))
                .filter(words -> !ready.confirmed() && !words.isEmpty());
        String at = station.map(Vocabulary.StationClass::name).orElse(Wording.words(step.station()))
                .toLowerCase(Locale.ROOT);
        return new Doing.Start(ready.missing(asked).isEmpty() ? "Scan the label of the " + at + " to begin."
                : "Scan what touches the pieces, then the " + at + ".",
                confirm.isPresent() ? cautions : List.of(), confirm,
                asked.stream().map(use -> scan(use, ready)).toList(), step.needs());
    }

    /** Gloves whose label is scanned are not confirmed a second time. */
    private String confirmation(Step step, List<Use> asked) {
        List<String> parts = new ArrayList<>();
        if (!step.cautions().isEmpty()) {
            parts.add("Cautions read");
        }
        step.gloves().filter(key -> asked.stream().noneMatch(use -> use.kind() == ContactKind.GLOVES))
                .map(key -> Optional.ofNullable(vocabulary.gloves().get(key)).map(Vocabulary.Glove::name)
                        .orElse(Wording.words(key)).toLowerCase(Locale.ROOT))
                .ifPresent(name -> parts.add((parts.isEmpty() ? "Gloves on: " : "gloves on: ") + name));
        return String.join(", ", parts);
    }

    private Doing.Scan scan(Use use, MadeReady ready) {
        return new Doing.Scan(vocabulary.supplyName(use.type()) + (use.change() ? ", a new pair" : ""),
                ready.scanned(use).map(supply -> supply.id() + ", " + supply.lot()));
    }

    private Doing reading(NextAction.Read read) {
        Optional<Reading> last = load.first().traveller().run(read.step().id())
                .flatMap(run -> run.reading(read.reading().id())).filter(reading -> read.again());
        return new Doing.Reading(read.reading(), unit(read.reading()), limits(read.reading()),
                last.map(reading -> "The last one, " + value(read.reading(), reading.current())
                        + ", was not in order. Put it right, then read again."));
    }

    private Doing holding(NextAction.Holding hold) {
        Step step = hold.step();
        String then = step.gap().map(Gap::maximum).flatMap(within -> after(step)
                .map(next -> " Then " + next.title().toLowerCase(java.util.Locale.ROOT) + " within "
                        + Words.duration(within) + ".")).orElse("");
        Hold limits = step.hold().orElseThrow();
        return new Doing.Holding(step.title(), limits, hold.begun(), hold.earliest(), out(step) + then,
                "Too long: spoilt for this step. Take them out at once; a nonconformance opens by itself.",
                isWet(step) ? "Lifted out" : step.kind() == StepKind.DRY ? "Taken out" : "Time kept");
    }

    private Optional<Step> after(Step step) {
        List<Step> steps = load.first().procedure().steps();
        int at = load.first().procedure().position(step.id()) + 1;
        return at < steps.size() ? Optional.of(steps.get(at)) : Optional.empty();
    }

    private static boolean isWet(Step step) {
        return step.kind() == StepKind.SOAK || step.kind() == StepKind.RINSE;
    }

    private static String intoIt(Step step) {
        return isWet(step) ? "Lower the basket in, then press at once." : "Begin, then press at once.";
    }

    private static String out(Step step) {
        return switch (step.kind()) {
            case SOAK, RINSE -> "Lift the basket out.";
            case DRY -> "Take the pieces out.";
            case WORK, WIPE, CHECK, INSPECTION, PASS_IN, WELD -> "Go on.";
        };
    }

    /** Exactly what the signature covers. */
    private List<String> signed(Step step) {
        List<String> lines = new ArrayList<>();
        StepRun run = load.first().traveller().run(step.id()).orElseThrow();
        lines.add("Step " + load.number(step) + " " + step.title() + (run.pass() > 1 ? ", pass " + run.pass() : ""));
        lines.add(CardWriter.words(load));
        run.station().ifPresent(station -> lines.add("At " + station + ", begun "
                + Words.clockTime(run.startedAt().wall(), now.wall(), zone)));
        step.hold().ifPresent(hold -> run.holdEndedAt().ifPresent(end -> lines.add("Held "
                + Words.duration(end.since(run.holdBegunAt().orElseThrow())) + ", limits " + Phrases.limits(hold))));
        step.readings().forEach(spec -> run.reading(spec.id()).ifPresent(reading -> lines.add(spec.label() + ": "
                + value(spec, reading.current()) + (reading.correction().isPresent() ? ", corrected" : "")
                + (reading.currentInLimits() ? "" : ", NOT in order"))));
        return lines;
    }

    private static String meaning(Step step) {
        return step.signedBy() == SignedBy.LEAD ? "The lead signs: I did this step as written."
                : "I did this step as written.";
    }

    private Doing stopped(List<Nonconformance> open) {
        List<String> lines = new ArrayList<>();
        open.forEach(nc -> {
            Step step = load.first().procedure().step(nc.step());
            lines.add("Number " + nc.number() + ", " + Phrases.cause(nc.cause()) + " at step " + step.number() + " "
                    + step.title() + ", " + Phrases.pieces(nc.pieces()) + ". "
                    + FindingWords.of(nc.cause(), nc.text(), step, vocabulary));
        });
        lines.add("Set the pieces apart and call the lead or the inspector. The card goes on by itself after they"
                + " decide.");
        return new Doing.Wait("Stopped", lines);
    }

    private String where() {
        return load.first().traveller().placement().map(place -> "The pieces are in " + place.bin() + ".")
                .orElse("The pieces are in no bin.");
    }

    String unit(ReadingSpec spec) {
        return vocabulary.symbol(spec);
    }

    String limits(ReadingSpec spec) {
        return spec.isPassFail() ? spec.label() : Words.limits(spec.limits(), unit(spec));
    }

    String value(ReadingSpec spec, java.math.BigDecimal value) {
        return Phrases.value(spec, unit(spec), value);
    }

    private static String or(List<BinClass> classes) {
        return classes.stream().map(one -> Wording.words(one.name())).collect(Collectors.joining(" or "));
    }
}
