package brightseam.ui.trace;

import brightseam.kernel.JointId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.trace.PieceNumbers;
import brightseam.trace.Reach;
import brightseam.trace.Reached;
import brightseam.trace.Touch;
import brightseam.trace.Whereabouts;
import brightseam.ui.desk.Csv;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Answers as lists for a spreadsheet program, one contact a line, times in UTC. */
final class TraceCsv {

    private TraceCsv() {}

    /** What a thing touched: every contact of {@code reach}. */
    static String reach(Reach reach, List<Touch> touches) {
        Map<TravellerId, Whereabouts> now = reach.travellers().stream().map(Reached::now)
                .collect(Collectors.toMap(Whereabouts::traveller, one -> one));
        return Csv.write(List.of("kind", "label", "lot", "traveller", "recorded_as", "pieces", "part_number", "heat",
                        "kit", "step", "pass", "joint", "from", "until", "pieces_left", "now"),
                touches.stream().map(touch -> {
                    Whereabouts where = now.get(touch.traveller());
                    return List.of(TraceWords.kind(touch.thing().kind()), touch.thing().label(), touch.thing().lot(),
                            touch.traveller().value(), touch.recordedAs().value(), PieceNumbers.write(touch.pieces()),
                            where.part().partNumber(), where.heat().value(), where.kit().value(), step(touch),
                            String.valueOf(touch.pass()), joint(touch), touch.from().toString(), until(touch),
                            PieceNumbers.write(where.pieces()), TraceWords.where(where));
                }).toList());
    }

    /** What touched pieces. */
    static String touches(List<Touch> touches) {
        return Csv.write(List.of("traveller", "recorded_as", "pieces", "kind", "type", "label", "lot", "step", "pass",
                        "joint", "from", "until"),
                touches.stream().map(touch -> List.of(touch.traveller().value(), touch.recordedAs().value(),
                        PieceNumbers.write(touch.pieces()), TraceWords.kind(touch.thing().kind()), touch.type(),
                        touch.thing().label(), touch.thing().lot(), step(touch), String.valueOf(touch.pass()),
                        joint(touch), touch.from().toString(), until(touch))).toList());
    }

    private static String step(Touch touch) {
        return touch.step().map(StepId::value).orElse("");
    }

    private static String joint(Touch touch) {
        return touch.joint().map(JointId::toString).orElse("");
    }

    private static String until(Touch touch) {
        return touch.until().map(Instant::toString).orElse("");
    }
}
