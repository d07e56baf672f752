package brightseam.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.RandomAccessFile;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The crash harness, small, and what else can happen to a server's process and its folder. */
class CrashIT {

    private static final int ROUNDS = 3;
    private static final int TABLETS = 12;
    private static final long SEED = 20_310_304;
    private static final long MILLIS_MAX = 120_000;
    private static final long ROOM_BYTES = 400_000;

    @TempDir
    static Path folder;

    private static final HttpClient HTTP = HttpClient.newHttpClient();
    private static List<String> faults;

    @BeforeAll
    static void crash() throws Exception {
        faults = CrashHarness.run(folder.resolve("killed"), ROUNDS, TABLETS, SEED, MILLIS_MAX, System.out);
    }

    @AfterAll
    static void close() {
        HTTP.close();
    }

    @Test
    void what_was_acknowledged_survives_every_kill() {
        assertThat(faults).isEmpty();
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
                assertThat(acknowledged.entries()).isPositive();
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

    /** Zeroes or cuts the last bytes of the database, as a torn write leaves it. */
    static void tear(Path database, long bytes, boolean cut) throws Exception {
        try (RandomAccessFile file = new RandomAccessFile(database.toFile(), "rw")) {
            long length = Math.max(0, file.length() - bytes);
            if (cut) {
                file.setLength(length);
            } else {
                file.seek(length);
                file.write(new byte[(int) bytes]);
            }
        }
    }
}
