package brightseam.crash;

import java.io.PrintStream;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Kills the real server under load and compares what it had acknowledged with what it has when it is back.
 *
 * <p>Many tablets sign over HTTP, by badge and PIN. At a random moment the process is killed ({@code kill -9}); the
 * server starts again on the same folder; every entry that any tablet ever got an answer for must be there with the same
 * hash, every chain must fit, no request may be there by half, and the tables that screens read must be what a rebuild
 * makes. Then the tablets go on. Arguments: {@code rounds=20 tablets=40 seed=1 minutes=60 folder=…}, each optional; it
 * ends after the rounds or the minutes, whichever comes first. Exit status 1 where something was lost.
 */
public final class CrashHarness implements AutoCloseable {

    private static final int KILL_AFTER_MILLIS_MAX = 4_000;
    private static final int LOOK_MILLIS = 20;

    private final Path folder;
    private final Random random;
    private final PrintStream out;
    private final HttpClient http = HttpClient.newHttpClient();
    private final Acknowledged acknowledged = new Acknowledged();
    private final List<CrashTablet> tablets;
    private ServerProcess server;

    private CrashHarness(Path folder, int tablets, long seed, PrintStream out) throws Exception {
        this.folder = folder;
        this.random = new Random(seed);
        this.out = out;
        this.tablets = IntStream.range(0, tablets)
                .mapToObj(number -> new CrashTablet(number, acknowledged, http)).toList();
        this.server = ServerProcess.running(folder, ServerProcess.Way.plain());
    }

    /** Runs as the arguments say, and exits. */
    public static void main(String[] args) throws Exception {
        Map<String, String> given = new TreeMap<>(Map.of("rounds", "20", "tablets", "40", "seed", "1", "minutes", "60"));
        for (String argument : (String.join(" ", args) + " " + System.getProperty("bench.arguments", "")).split(" +")) {
            if (argument.contains("=")) {
                given.put(argument.substring(0, argument.indexOf('=')), argument.substring(argument.indexOf('=') + 1));
            }
        }
        Path folder = given.containsKey("folder") ? Path.of(given.get("folder"))
                : Files.createTempDirectory("brightseam-crash");
        System.out.println(given + ", data in " + folder);
        List<String> faults = run(folder, Integer.parseInt(given.get("rounds")),
                Integer.parseInt(given.get("tablets")), Long.parseLong(given.get("seed")),
                60_000L * Integer.parseInt(given.get("minutes")), System.out);
        faults.forEach(System.out::println);
        System.exit(faults.isEmpty() ? 0 : 1);
    }

    /**
     * Kills the server on {@code folder} so many times, or until so many milliseconds are over; answers everything
     * that is wrong afterwards, empty where nothing is.
     */
    static List<String> run(Path folder, int rounds, int tablets, long seed, long millisMax, PrintStream out)
            throws Exception {
        long end = System.nanoTime() + millisMax * 1_000_000;
        try (CrashHarness harness = new CrashHarness(folder, tablets, seed, out)) {
            CrashTablet.post(harness.http, harness.server.url() + "/crash/people?tablets=" + tablets);
            List<String> faults = List.of();
            int round = 1;
            for (; round <= rounds && faults.isEmpty() && System.nanoTime() < end; round++) {
                faults = harness.round(round);
            }
            out.println(harness.acknowledged + "; " + (round - 1) + " kills, " + faults.size() + " faults");
            return faults;
        }
    }

    private List<String> round(int round) throws Exception {
        long before = acknowledged.requests();
        List<Thread> working = tablets.stream()
                .map(tablet -> Thread.ofPlatform().start(() -> tablet.work(server.url()))).toList();
        while (acknowledged.requests() < before + tablets.size() && server.isAlive() && isAnyAlive(working)) {
            working.getFirst().join(LOOK_MILLIS);
        }
        int millis = random.nextInt(KILL_AFTER_MILLIS_MAX);
        working.getFirst().join(millis + 1);
        server.kill();
        for (Thread thread : working) {
            thread.join();
        }
        long answered = acknowledged.requests() - before;
        List<String> refusals = tablets.stream().flatMap(tablet -> tablet.lastRefusal().stream()).toList();
        if (!refusals.isEmpty() || answered == 0) {
            return List.of("the tablets could not work: " + refusals + "\n" + server.said());
        }
        return look(round, millis, answered);
    }

    private List<String> look(int round, int millis, long answered) throws Exception {
        server = ServerProcess.running(folder, ServerProcess.Way.plain());
        LedgerLook look = LedgerLook.at(http, server.url());
        List<String> faults = new ArrayList<>(look.faults(acknowledged));
        String differences = LedgerLook.get(http, server.url() + "/crash/differences");
        differences.lines().forEach(line -> faults.add("not what a rebuild makes: " + line));
        out.printf("round %d: killed after %,d ms and %,d answers; %,d entries in the ledger, %,d acknowledged, "
                + "%d faults%n", round, millis, answered, look.entries(), acknowledged.entries(), faults.size());
        return faults;
    }

    private static boolean isAnyAlive(List<Thread> threads) {
        return threads.stream().anyMatch(Thread::isAlive);
    }

    @Override
    public void close() throws Exception {
        server.close();
        http.close();
    }
}
