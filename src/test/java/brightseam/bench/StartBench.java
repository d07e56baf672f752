package brightseam.bench;

import brightseam.crash.ServerProcess;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * From the start of the server's process to its first answered page, on a history of some thousand events and on one
 * of a million, in turns in the same run; and the bytes of the database for each event. Arguments: the folder in which
 * both are made or found again (a temporary one otherwise), the events of the long one (a million), the turns (3).
 */
public final class StartBench {

    private static final int EVENTS = 1_000_000;
    private static final int TURNS = 3;
    private static final long SHORT_EVENTS = 1;

    private StartBench() {}

    /** Runs and prints. */
    public static void main(String[] args) throws Exception {
        List<String> given = Arguments.of(args);
        boolean kept = !given.isEmpty();
        Path folder = kept ? Path.of(given.getFirst()) : Files.createTempDirectory("brightseam-bench");
        long events = given.size() > 1 ? Long.parseLong(given.get(1)) : EVENTS;
        int turns = given.size() > 2 ? Integer.parseInt(given.get(2)) : TURNS;
        try {
            measure(folder, events, turns);
        } finally {
            if (!kept) {
                LedgerBench.delete(folder);
            }
        }
        System.exit(0);
    }

    private static void measure(Path folder, long events, int turns) throws Exception {
        Path few = folder.resolve("few");
        Path many = folder.resolve("many");
        long fewEvents = MillionEvents.fill(few, SHORT_EVENTS);
        long manyEvents = MillionEvents.fill(many, events);
        start(few);
        start(many);
        List<Long> fewMillis = new ArrayList<>();
        List<Long> manyMillis = new ArrayList<>();
        for (int turn = 0; turn < turns; turn++) {
            fewMillis.add(start(few));
            manyMillis.add(start(many));
        }
        System.out.printf("events | start to first page, median of %d/ms | database bytes for each event%n", turns);
        print(few, fewEvents, median(fewMillis));
        print(many, manyEvents, median(manyMillis));
        System.out.printf("ratio %.2f; each event more costs %.0f bytes%n",
                (double) median(manyMillis) / median(fewMillis),
                (double) (MillionEvents.bytes(many) - MillionEvents.bytes(few)) / Math.max(1, manyEvents - fewEvents));
    }

    private static void print(Path folder, long events, long millis) throws Exception {
        System.out.printf("%,d | %,d | %,.0f%n", events, millis, (double) MillionEvents.bytes(folder) / events);
    }

    private static long start(Path folder) throws Exception {
        long begun = System.nanoTime();
        try (ServerProcess server = ServerProcess.running(folder, ServerProcess.Way.plain());
                HttpClient http = HttpClient.newHttpClient()) {
            HttpResponse<String> page = http.send(HttpRequest.newBuilder(URI.create(server.url() + "/sign-in")).build(),
                    HttpResponse.BodyHandlers.ofString());
            if (page.statusCode() != 200) {
                throw new IllegalStateException("the first page answers " + page.statusCode());
            }
            long millis = (System.nanoTime() - begun) / 1_000_000;
            server.stop();
            return millis;
        }
    }

    private static long median(List<Long> millis) {
        return millis.stream().sorted().toList().get(millis.size() / 2);
    }
}
