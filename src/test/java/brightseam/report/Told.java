package brightseam.report;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.Vocabulary.Unit;
import brightseam.traveller.Stories;
import brightseam.traveller.TravellerEvent;
import brightseam.words.Wording;
import brightseam.words.shell.SharedWords;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tells stories as documents, with a made-up chain. */
public final class Told {

    private Told() {}

    /** The document of {@code events}, whose last hash ends in their number. */
    public static TravellerDocument of(List<TravellerEvent> events) {
        return of(events, SharedWords.wording());
    }

    static TravellerDocument of(List<TravellerEvent> events, Wording wording) {
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
                vocabulary, wording);
        return TravellerDocument.of(lines, Stories.procedure(), lookups, Optional.empty());
    }
}
