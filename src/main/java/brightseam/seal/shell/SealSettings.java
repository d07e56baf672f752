package brightseam.seal.shell;

import java.nio.file.Path;
import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * How the ledger is sealed.
 *
 * @param data the data folder
 * @param heads the file of the heads; empty: {@code heads.txt} in the data folder
 * @param keys the folder of the keys; empty: {@code keys} in the data folder
 * @param name what the log is called from its first start on; empty: by chance
 * @param sealMillis how long what was stored may wait for its head
 * @param overlapDays for how long an old key signs beside a new one
 * @param lossNoted {@code <size of the last head>: <name>: <reason>} to go on once without what was lost; else empty
 * @param witnesses folders and addresses that get heads, parted by commas
 * @param witnessSeconds how often at most
 */
@Component
record SealSettings(
        @Value("${brightseam.data:./data}") Path data,
        @Value("${brightseam.heads:}") String heads,
        @Value("${brightseam.keys:}") String keys,
        @Value("${brightseam.ledger-name:}") String name,
        @Value("${brightseam.seal-millis:1000}") long sealMillis,
        @Value("${brightseam.key-overlap-days:30}") long overlapDays,
        @Value("${brightseam.loss-noted:}") String lossNoted,
        @Value("${brightseam.witness:}") String witnesses,
        @Value("${brightseam.witness-seconds:60}") long witnessSeconds) {

    Path keyFolder() {
        return keys.isBlank() ? data.resolve("keys") : Path.of(keys.strip());
    }

    Path headsFile() {
        return heads.isBlank() ? data.resolve("heads.txt") : Path.of(heads.strip());
    }

    Duration overlap() {
        return Duration.ofDays(overlapDays);
    }
}
