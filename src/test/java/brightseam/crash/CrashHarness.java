package brightseam.crash;

import brightseam.bench.Arguments;
import java.io.IOException;
import java.io.PrintStream;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;

/**
 * Kills the real server under load and compares what it had acknowledged with what it has when it is back.
 *
 * <p>Many tablets sign over HTTP, by badge and PIN. At a random moment the process is killed ({@code kill -9}); the
 * server starts again on the same folder; every entry that any tablet ever got an answer for must be there with the
 * same hash, every chain must fit, no request may be there by half, and the tables that screens read must be what a
 * rebuild makes. Then the tablets go on. Arguments: {@code rounds=20 tablets=40 seed=1 minutes=60 folder=… wall=yes},
 * each optional; it ends after the rounds or the minutes, whichever comes first. Exit status 1 where
 * something was lost.
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
    private final Optional<SteppedWall> wall;
    private ServerProcess server;

    private CrashHarness(Path folder, Plan plan, PrintStream out) throws Exception {
        this.folder = folder;
        this.random = new Random(plan.seed());
        this.wall = plan.stepsWall() ? SteppedWall.of(plan.library(), folder.resolveSibling("wall"), random)
                : Optional.empty();
        this.out = out;
        this.tablets = IntStream.range(0, plan.tablets())
                .mapToObj(number -> new CrashTablet(number, acknowledged, http)).toList();
        out.println(wall.isPresent() ? "the wall clock is stepped" : "the wall clock is left alone");
        this.server = ServerProcess.running(folder, way());
    }

    /**
     * What is done.
     *
     * @param rounds kills
     * @param tablets that sign at the same time
     * @param seed of the moments
     * @param minutes after which no further round begins
     * @param stepsWall whether the wall clock is stepped by hours, while the server runs and while it does not
     * @param library that steps it; where it is usually found otherwise
     */
    record Plan(int rounds, int tablets, long seed, int minutes, boolean stepsWall, Optional<Path> library) {}

    /** Runs as the arguments say, and exits. */
    public static void main(String[] args) throws Exception {
        Map<String, String> given = given(Arguments.of(args));
        Path folder = given.containsKey("folder") ? Path.of(given.get("folder"))
                : Files.createTempDirectory("brightseam-crash");
        System.out.println(given + ", data in " + folder);
        Result result = run(folder, new Plan(Integer.parseInt(given.get("rounds")),
                Integer.parseInt(given.get("tablets")), Long.parseLong(given.get("seed")),
                Integer.parseInt(given.get("minutes")), given.containsKey("wall"),
                Optional.ofNullable(given.get("wall")).filter(path -> path.startsWith("/")).map(Path::of)), System.out);
        result.faults().forEach(System.out::println);
        System.exit(result.faults().isEmpty() ? 0 : 1);
    }

    /** Everything that was wrong, empty where nothing was; and what had been acknowledged. */
    record Result(List<String> faults, Acknowledged acknowledged) {}

    private static Map<String, String> given(List<String> arguments) {
        Map<String, String> given = new TreeMap<>(
                Map.of("rounds", "20", "tablets", "40", "seed", "1", "minutes", "60"));
        for (String argument : arguments) {
            int equals = argument.indexOf('=');
            if (equals > 0) {
                given.put(argument.substring(0, equals), argument.substring(equals + 1));
            }
        }
        return given;
    }

    /**
     * Kills the server on {@code folder} as {@code plan} says; answers what is wrong afterwards.
     */
    static Result run(Path folder, Plan plan, PrintStream out) throws Exception {
        long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(plan.minutes());
        try (CrashHarness harness = new CrashHarness(folder, plan, out)) {
            CrashTablet.post(harness.http, harness.server.url() + "/crash/people?tablets=" + plan.tablets());
            List<String> faults = List.of();
            int round = 1;
            for (; round <= plan.rounds() && faults.isEmpty() && System.nanoTime() < end; round++) {
                faults = harness.round(round);
            }
            out.println(harness.acknowledged + "; " + (round - 1) + " kills, " + faults.size() + " faults");
            return new Result(faults, harness.acknowledged);
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
        working.getFirst().join(millis / 2 + 1);
        stepWall();
        working.getFirst().join(millis / 2 + 1);
        server.kill();
        stepWall();
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
        server = ServerProcess.running(folder, way());
        LedgerLook look = LedgerLook.at(http, server.url());
        List<String> faults = new ArrayList<>(look.faults(acknowledged));
        String differences = LedgerLook.get(http, server.url() + "/crash/differences");
        differences.lines().forEach(line -> faults.add("not what a rebuild makes: " + line));
        out.printf("round %d: killed after %,d ms and %,d answers; %,d entries in the ledger, %,d acknowledged, "
                + "%d faults%n", round, millis, answered, look.entries(), acknowledged.entries(), faults.size());
        return faults;
    }

    private ServerProcess.Way way() {
        return wall.map(SteppedWall::way).orElse(ServerProcess.Way.plain());
    }

    private void stepWall() throws IOException {
        if (wall.isPresent()) {
            out.println("the wall clock now differs by " + wall.get().step() + " h");
        }
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
