package brightseam.crash;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopTablet;
import brightseam.demo.DemoPerson;
import brightseam.scan.LabelKind;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person signs on a real tablet while the disk is full: told at once, in words, that it does not count. */
class NotStoredIT {

    private static final String BIN = "B-7000000";
    private static final long ROOM_BYTES = 300_000;

    @TempDir
    Path folder;

    @Test
    void a_signature_that_the_disk_did_not_take_is_told_as_not_stored_and_counts_once_there_is_room() throws Exception {
        Path made = Files.createDirectory(folder.resolve("made"));
        try (HttpClient http = HttpClient.newHttpClient()) {
            List<String> pair;
            try (ServerProcess server = ServerProcess.running(made, ServerProcess.Way.plain())) {
                CrashTablet.post(http, server.url() + "/crash/people?tablets=2");
                pair = waitingForASignature(http, server.url());
                server.stop();
            }
            try (SmallDisk disk = SmallDisk.copyOf(made, folder.resolve("full"), ROOM_BYTES)) {
                signOnAFullDisk(http, disk, pair.getFirst());
            }
        }
    }

    private static void signOnAFullDisk(HttpClient http, SmallDisk disk, String lot) throws Exception {
        String pin = DemoPerson.ILKA_FERROW.pin();
        try (ServerProcess server = ServerProcess.running(disk.folder(), disk.way());
                ShopTablet tablet = new ShopTablet(server.url(), "not-stored")
                        .signIn(DemoPerson.ILKA_FERROW.badge().value(), pin)) {
            tablet.scan(LabelKind.TRAVELLER, lot).shows("Cut to length");
            new CrashTablet(1, new Acknowledged(), http).work(server.url());
            tablet.enter(pin).hears("NOT STORED").look("told");
            assertThat(LedgerLook.get(http, server.url() + "/crash/next?lot=" + lot)).isEqualTo("Sign");
            disk.makeRoom();
        }
        try (ServerProcess server = ServerProcess.running(disk.folder(), ServerProcess.Way.plain());
                ShopTablet tablet = new ShopTablet(server.url(), "stored-again")
                        .signIn(DemoPerson.ILKA_FERROW.badge().value(), pin)) {
            tablet.scan(LabelKind.TRAVELLER, lot).shows("Cut to length").enter(pin).hears("Signed");
        }
    }

    /** The labels of two lots whose first step is done and not signed. */
    private static List<String> waitingForASignature(HttpClient http, String url) throws Exception {
        String released = CrashTablet.post(http, url + "/crash/release?bin=" + BIN).body();
        List<String> pair = released.lines().filter(line -> line.startsWith("traveller/"))
                .map(line -> line.substring("traveller/".length(), line.indexOf(' '))).toList();
        while (!LedgerLook.get(http, url + "/crash/next?lot=" + pair.getFirst()).equals("Sign")) {
            int status = CrashTablet.post(http, url + "/crash/act?tablet=0&pair=" + String.join(",", pair)
                    + "&bin=" + BIN).statusCode();
            assertThat(status).isEqualTo(200);
        }
        return pair;
    }
}
