package brightseam.report.shell;

import brightseam.kernel.Origin;
import brightseam.ledger.Entry;
import brightseam.report.Phrases;
import brightseam.traveller.Signature;
import brightseam.traveller.shell.RecordedEvent;
import brightseam.words.CsvCell;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The entries of one record as CSV (RFC 4180): one line each, the content in the canonical JSON that was hashed. Cells
 * are as they are, for whoever hashes them again; none begins with a formula's sign, since each is JSON, a label, a
 * number or a hash. Behind them stands in words who signed what, which nobody hashes.
 */
final class EntryCsv {

    private static final String HEAD =
            "stream,version,wall_time,elapsed_ms,badge,tablet,demo,type,content,previous_hash,hash,"
                    + "signed_by,stamp,meaning,covers,signed_content";

    private EntryCsv() {}

    static String write(List<RecordedEvent> record) {
        return Stream.concat(Stream.of(HEAD), record.stream().map(EntryCsv::line))
                .collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    private static String line(RecordedEvent recorded) {
        Entry entry = recorded.entry();
        Origin origin = recorded.event().origin();
        Optional<Signature> mark = recorded.event().mark();
        Stream<String> exactly = Stream.of(entry.stream().value(), String.valueOf(entry.version()),
                origin.at().wall().toString(), String.valueOf(origin.at().elapsedMillis()), origin.by().value(),
                origin.tablet(), String.valueOf(origin.demo()), entry.type(), entry.json(), entry.previous(),
                entry.hash()).map(CsvCell::exactly);
        Stream<String> words = Stream.of(mark.map(made -> made.signer().name()).orElse(""),
                mark.flatMap(made -> made.signer().stamp()).orElse(""),
                mark.map(made -> Phrases.meaning(made.meaning())).orElse(""),
                mark.map(made -> Covered.words(recorded.event())).orElse(""),
                mark.flatMap(Signature::content).orElse("")).map(CsvCell::of);
        return Stream.concat(exactly, words).collect(Collectors.joining(","));
    }
}
