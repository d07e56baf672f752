package brightseam.report.shell;

import brightseam.kernel.Origin;
import brightseam.ledger.Entry;
import brightseam.traveller.shell.RecordedEvent;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The entries of one record as CSV (RFC 4180): one line each, the content in the canonical JSON that was hashed. */
final class EntryCsv {

    private static final String HEAD =
            "stream,version,wall_time,elapsed_ms,badge,tablet,demo,type,content,previous_hash,hash";

    private EntryCsv() {}

    static String write(List<RecordedEvent> record) {
        return Stream.concat(Stream.of(HEAD), record.stream().map(EntryCsv::line))
                .collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    private static String line(RecordedEvent recorded) {
        Entry entry = recorded.entry();
        Origin origin = recorded.event().origin();
        return Stream.of(entry.stream().value(), String.valueOf(entry.version()), origin.at().wall().toString(),
                        String.valueOf(origin.at().elapsedMillis()), origin.by().value(), origin.tablet(),
                        String.valueOf(origin.demo()), entry.type(), entry.json(), entry.previous(), entry.hash())
                .map(EntryCsv::cell).collect(Collectors.joining(","));
    }

    /** Quoted where it has to be; a leading sign that a spreadsheet would take for a formula gets a quote before it. */
    static String cell(String text) {
        String safe = !text.isEmpty() && "=+-@\t".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        return safe.matches("[^\",\r\n]*") ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
