package brightseam.ui.board;

import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.procedure.Vocabulary;
import brightseam.report.Phrases;
import brightseam.traveller.Reading;
import brightseam.traveller.StepRun;
import brightseam.traveller.shell.Card;
import brightseam.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One passage through a step, or a step to come, as the traveller's page says it.
 *
 * @param number the step's number
 * @param title its title
 * @param state {@code signed}, {@code begun}, {@code held, not signed}, {@code to come} or {@code superseded by rework}
 * @param who who signed it and when, or who began it
 * @param lasted how long its hold lasted, where it ended
 * @param readings what was read, each with its unit; a corrected value says what it was before
 */
record StepLine(int number, String title, String state, String who, String lasted, List<String> readings) {

    /** The steps of {@code card} in order, passages that rework superseded before the ones that count. */
    static List<StepLine> of(Card card, Vocabulary vocabulary, ZoneId zone) {
        List<StepLine> lines = new ArrayList<>();
        for (Step step : card.procedure().steps()) {
            card.traveller().superseded().stream().filter(run -> run.step().equals(step.id()))
                    .forEach(run -> lines.add(line(step, run, "superseded by rework", vocabulary, zone)));
            Optional<StepRun> run = card.traveller().run(step.id());
            lines.add(run.map(now -> line(step, now, state(now), vocabulary, zone))
                    .orElseGet(() -> new StepLine(step.number(), step.title(), "to come", "", "", List.of())));
        }
        return lines;
    }

    private static String state(StepRun run) {
        if (run.isSigned()) {
            return "signed";
        }
        return run.holdEndedAt().isPresent() ? "held, not signed" : run.isHolding() ? "hold is running" : "begun";
    }

    private static StepLine line(Step step, StepRun run, String state, Vocabulary vocabulary, ZoneId zone) {
        String who = run.signature().map(signature -> signature.signer().name()
                        + signature.signer().stamp().filter(stamp -> step.isInspectionPoint())
                                .map(stamp -> ", stamp " + stamp).orElse("")
                        + ", " + Words.stamp(run.signedAt().orElseThrow().wall(), zone))
                .orElseGet(() -> "begun by " + run.startedBy() + ", " + Words.stamp(run.startedAt().wall(), zone));
        String at = run.station().map(station -> " at " + station).orElse("");
        String lasted = run.holdBegunAt().flatMap(begun -> run.holdEndedAt().map(end -> end.since(begun)))
                .map(Words::duration).orElse("");
        return new StepLine(step.number(), step.title(), state, who + at, lasted,
                run.readings().stream().map(reading -> words(step, reading, vocabulary)).toList());
    }

    private static String words(Step step, Reading reading, Vocabulary vocabulary) {
        ReadingSpec spec = step.readings().stream().filter(known -> known.id().equals(reading.id())).findFirst()
                .orElseThrow();
        String symbol = vocabulary.symbol(spec);
        String verdict = reading.currentInLimits() || spec.isPassFail() ? "" : ": NOT in order";
        String before = reading.correction().map(made -> " (corrected, was "
                + Phrases.value(spec, symbol, reading.value()) + ": " + made.reason() + ")").orElse("");
        return spec.label() + ": " + Phrases.value(spec, symbol, reading.current()) + verdict + before;
    }
}
