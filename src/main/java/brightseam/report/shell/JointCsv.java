package brightseam.report.shell;

import brightseam.report.JointTaken;
import brightseam.report.TravellerDocument;
import brightseam.words.CsvCell;
import brightseam.traveller.JointFact;
import brightseam.traveller.JudgedFact;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The joints of one record as CSV (RFC 4180): a line for each stretch of each run; ppm by volume, seconds, wall times
 * in ISO 8601.
 */
final class JointCsv {

    private static final String HEAD = "traveller,joint,run,stretch,session,chamber,pieces,pass,welder,filler,"
            + "back_side,arc_began,arc_stopped,hot_until,oxygen_meter,oxygen_limit_ppm,oxygen_highest_ppm,"
            + "oxygen_mean_ppm,seconds_above,excursions,gaps,proven,simulated,series_sha256,verdict,colour,"
            + "acceptance,photographs";

    private JointCsv() {}

    static String write(TravellerDocument told) {
        return Stream.concat(Stream.of(HEAD), told.chamber().joints().stream()
                        .flatMap(joint -> IntStream.range(0, joint.stretches().size())
                                .mapToObj(number -> line(told.identity().id().value(), joint, number))))
                .collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    private static String line(String traveller, JointTaken joint, int number) {
        JointFact fact = joint.stretches().get(number);
        Optional<JudgedFact> last = joint.verdicts().isEmpty() ? Optional.empty()
                : Optional.of(joint.verdicts().getLast().verdict());
        return Stream.of(List.of(traveller, fact.joint().toString(), String.valueOf(fact.run()),
                        joint.stretch(number), fact.session().value(), fact.chamber().value(), numbers(joint.pieces()),
                        String.valueOf(joint.pass()), fact.welder().value(), fact.filler(), fact.backSide(),
                        fact.startedAt().wall().toString(), fact.stoppedAt().wall().toString(),
                        fact.hotUntil().wall().toString(), fact.oxygenMeter().value()),
                List.of(fact.oxygenPpmLimit().toPlainString(), fact.oxygenPpmHighest().toPlainString(),
                        fact.oxygenPpmMean().toPlainString(), fact.secondsAbove().toPlainString(),
                        String.valueOf(fact.excursions().size()), String.valueOf(fact.gaps().size()),
                        fact.proven() ? "yes" : "no", fact.simulated() ? "yes" : "no", fact.seriesSha256()),
                List.of(last.map(verdict -> verdict.accepted() ? "accepted" : "rejected").orElse(""),
                        last.map(JudgedFact::colour).orElse(""), last.map(JudgedFact::acceptance).orElse(""),
                        last.map(JointCsv::photographs).orElse("")))
                .flatMap(List::stream).map(CsvCell::of).collect(Collectors.joining(","));
    }

    private static String photographs(JudgedFact verdict) {
        return verdict.photographs().stream().map(one -> one.name() + " " + one.sha256())
                .collect(Collectors.joining("; "));
    }

    private static String numbers(List<Integer> pieces) {
        return pieces.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
}
