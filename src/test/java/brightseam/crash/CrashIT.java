package brightseam.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.RandomAccessFile;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The crash harness, small, and what else can happen to a server's process and its folder. */
class CrashIT {

    private static final int ROUNDS = 3;
    private static final int TABLETS = 12;
    private static final long SEED = 20_310_304;
    private static final int MINUTES_MAX = 2;
    private static final long ROOM_BYTES = 400_000;

    @TempDir
    static Path folder;

    private static final HttpClient HTTP = HttpClient.newHttpClient();
    private static CrashHarness.Result result;

    @BeforeAll
    static void crash() throws Exception {
        result = CrashHarness.run(folder.resolve("killed"),
                new CrashHarness.Plan(ROUNDS, TABLETS, SEED, MINUTES_MAX, true, Optional.empty()), System.out);
    }

    @AfterAll
    static void close() {
        HTTP.close();
    }

    @Test
    void what_was_acknowledged_survives_every_kill() {
        assertThat(result.acknowledged().entries()).isPositive();
        assertThat(result.faults()).isEmpty();
    }

    @Test
    void a_full_disk_is_told_at_once_and_loses_nothing_and_a_second_server_on_the_folder_refuses() throws Exception {
        Acknowledged acknowledged = new Acknowledged();
        try (SmallDisk disk = SmallDisk.copyOf(folder.resolve("killed"), folder.resolve("full"), ROOM_BYTES)) {
            CrashTablet tablet = new CrashTablet(0, acknowledged, HTTP);
            try (ServerProcess server = ServerProcess.running(disk.folder(), disk.way())) {
                assertRefused(ServerProcess.start(disk.folder(), ServerProcess.Way.plain()),
                        "Another Brightseam server is using the data folder");
                tablet.work(server.url());
                assertThat(tablet.lastRefusal()).as("told by " + disk.kind()).hasValueSatisfying(
                        told -> assertThat(told).startsWith("503 not stored"));
            }
            disk.makeRoom();
            try (ServerProcess server = ServerProcess.running(disk.folder(), ServerProcess.Way.plain())) {
                assertThat(acknowledged.signatures()).isPositive();
                assertThat(LedgerLook.at(HTTP, server.url()).faults(acknowledged)).isEmpty();
                assertThat(LedgerLook.get(HTTP, server.url() + "/crash/differences")).isEmpty();
                HttpResponse<String> more = CrashTablet.post(HTTP, server.url() + "/crash/release?bin=B-7999999");
                assertThat(more.statusCode()).as(more.body()).isEqualTo(200);
            }
            System.out.println(acknowledged + "; then " + disk.kind() + ", none lost");
        }
    }

    @Test
    void a_folder_that_cannot_be_written_is_refused_in_words() throws Exception {
        assertRefused(ServerProcess.start(Path.of("/proc/brightseam"), ServerProcess.Way.plain()),
                "The data folder /proc/brightseam cannot be used");
    }

    private static void assertRefused(ServerProcess server, String words) throws Exception {
        try (server) {
            assertThat(server.exit()).isNotZero();
            assertThat(server.said()).contains(words);
        }
    }

    /** What a torn write leaves: the server refuses in words, or nothing that was acknowledged is missing. */
    @ParameterizedTest
    @CsvSource({"0.01, false", "0.3, true"})
    void a_torn_end_of_the_database_is_refused_or_loses_nothing(double share, boolean cut) throws Exception {
        Path torn = folder.resolve("torn" + cut);
        SmallDisk.copy(folder.resolve("killed"), torn);
        tear(torn.resolve("brightseam.mv.db"), share, cut);
        try (ServerProcess server = ServerProcess.start(torn, ServerProcess.Way.plain())) {
            if (server.isRunning()) {
                assertThat(LedgerLook.at(HTTP, server.url()).faults(result.acknowledged())).isEmpty();
            } else {
                assertThat(server.exit()).isNotZero();
                assertThat(server.said()).containsPattern("ledger|The database");
                System.out.println("torn by " + share + ": " + server.said().lines()
                        .filter(line -> line.matches(".*(ledger|The database).*")).findFirst().orElseThrow());
            }
        }
    }

    private static void tear(Path database, double share, boolean cut) throws Exception {
        try (RandomAccessFile file = new RandomAccessFile(database.toFile(), "rw")) {
            int bytes = (int) (file.length() * share);
            if (cut) {
                file.setLength(file.length() - bytes);
            } else {
                file.seek(file.length() - bytes);
                file.write(new byte[bytes]);
            }
        }
    }
}
