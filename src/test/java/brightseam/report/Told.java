package brightseam.report;

import brightseam.chart.ChartPoint;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Procedure;
import brightseam.procedure.Vocabulary.Unit;
import brightseam.procedure.Vocabulary;
import brightseam.traveller.Stories;
import brightseam.traveller.TravellerEvent;
import brightseam.words.Wording;
import brightseam.words.shell.SharedWords;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;

/** Tells stories as documents, with a made-up chain. */
public final class Told {

    private Told() {}

    /** The document of {@code events}, whose last hash ends in their number. */
    public static TravellerDocument of(List<TravellerEvent> events) {
        return of(events, SharedWords.wording());
    }

    /** The document of {@code events} of a lot that was welded in a session. */
    public static TravellerDocument inTheChamber(List<TravellerEvent> events) {
        return of(events, SharedWords.wording(), Stories.welded());
    }

    static TravellerDocument of(List<TravellerEvent> events, Wording wording) {
        return of(events, wording, Stories.procedure());
    }

    /** A reading every second, with a peak in the sixth and seconds ten to twelve missing. */
    private static List<ChartPoint> readings(SupplyId meter, long fromMillis, long toMillis) {
        return LongStream.rangeClosed(0, (toMillis - fromMillis) / 1000).filter(second -> second < 10 || second > 12)
                .mapToObj(second -> ChartPoint.good(fromMillis + 1000 * second, second == 6 ? 48 : 14 + second % 3))
                .toList();
    }

    private static TravellerDocument of(List<TravellerEvent> events, Wording wording, Procedure procedure) {
        List<RecordedLine> lines = new ArrayList<>();
        for (TravellerEvent event : events) {
            lines.add(new RecordedLine(lines.size() + 1, "%064x".formatted(lines.size() + 1), event));
        }
        Vocabulary vocabulary = new Vocabulary(Map.of(),
                Map.of("degC", new Unit("degC", "°C", "degree Celsius", "temperature", Optional.empty(),
                        Optional.empty())), Map.of(), Map.of(), Map.of(), List.of(), "Local codes rule.");
        Lookups lookups = new Lookups(Map.of(new BadgeId("P-0001"), "Nils Oker"),
                Optional.of(new HeatDetails("H-9T3381", "9", "tube", "25 x 1.2 mm", "Skerry Metals", "SM-20441",
                        Instant.parse("2031-01-15T08:00:00Z"), Optional.empty())),
                Optional.of(new Approval(new Who(new BadgeId("P-0003"), "Ada Roem"),
                        new Moment(Instant.parse("2031-02-01T10:00:00Z"), 500))),
                vocabulary, wording, Map.of("G-0701", LocalDate.parse("2031-09-30")), Told::readings);
        return TravellerDocument.of(lines, procedure, lookups, Optional.empty());
    }
}
