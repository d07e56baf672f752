package brightseam.bench;

import brightseam.browser.ShopServer;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.LastEntries;
import brightseam.ledger.shell.Ledger;
import brightseam.procedure.Step;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.traveller.NextAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/**
 * The shop's two numbers, on the real server. First, from scan to verdict: median and 99th percentile with 1 and with
 * 50 tablets, on histories of 1,000 and of 100,000 events, in all about a hundred scans a second, far more than hands
 * make; beside it what bare H2 commits take on the same beat, which tells what else the machine does. Then durable
 * signatures per second with 1, 8 and 64 signers beside bare H2 commits with the same durability, taking short turns in
 * the same run.
 */
public final class ShopBench {

    private static final KitId KIT = new KitId("K-9000");
    private static final HeatId HEAT = new HeatId("H-4471");
    private static final StepId CUT = new StepId("cut");
    private static final int[] HISTORIES = {1_000, 100_000};
    private static final BinId WRONG_BIN = new BinId("B-0401");
    private static final int ROUNDS = 3;
    private static final int LOTS_IN_WORK = 8;
    private static final int TURNS = 10;
    private static final long TURN_NANOS = 400_000_000L;
    private static final double SECONDS = TURNS * TURN_NANOS / 1e9;
    private static final int GROUP_MAX = 256;

    private final ShopServer shop = ShopServer.demo("--brightseam.demo-past=false", "--brightseam.greeting=false");
    private final Copies copies = new Copies(shop.bean(Ledger.class));
    private final Story story = shop.bean(Story.class);

    private ShopBench() {}

    /** Runs and prints; arguments {@code scans} or {@code signatures} for one of the two alone. */
    public static void main(String[] args) throws Exception {
        ShopBench bench = new ShopBench();
        try {
            bench.measure(Arguments.of(args));
        } finally {
            bench.shop.close();
        }
    }

    private void measure(List<String> parts) throws Exception {
        shop.bean(Lots.class).open(KIT, "Benchmark", Duration.ofDays(1), List.of(lot()));
        TravellerId closed = release();
        story.finish(closed);
        if (parts.isEmpty() || parts.contains("scans")) {
            scans(closed);
        }
        if (parts.isEmpty() || parts.contains("signatures")) {
            signatures(closed);
        }
    }

    private void scans(TravellerId closed) throws Exception {
        List<TravellerId> inWork = inWork();
        List<TravellerId> ofLongAgo = new ArrayList<>(List.of(closed));
        System.out.println("history/events | tablets | scans | median/ms | p99/ms"
                + " | put on disk: median/ms | p99/ms | bare commit: median/ms | p99/ms");
        Path folder = Files.createTempDirectory("brightseam-bench");
        for (int history : HISTORIES) {
            grow(history, closed, ofLongAgo);
            Tablets.Scans scans = new ShopScans(shop, inWork, ofLongAgo, WRONG_BIN);
            new Tablets(50, 100).round(scans, 20);
            scans(folder.resolve("one" + history), new Tablets(1, 20), new Tablets(1, 20), 400, scans);
            scans(folder.resolve("fifty" + history), new Tablets(50, 500), new Tablets(50, 500), 16, scans);
        }
        LedgerBench.delete(folder);
    }

    /** The shop's scans and, for scale, as many bare commits on the same beat take turns. */
    private void scans(Path folder, Tablets ours, Tablets bare, int scansInRound, Tablets.Scans scans)
            throws Exception {
        long events = events();
        try (BareCommits commits = new BareCommits(folder, 1)) {
            AtomicLong turn = new AtomicLong();
            for (int round = 0; round < ROUNDS; round++) {
                ours.round(scans, scansInRound);
                bare.round(chance -> {
                    boolean commit = chance.nextInt(100) >= 90;
                    if (commit) {
                        commits.store(0, turn.incrementAndGet());
                    }
                    return commit;
                }, scansInRound);
            }
        }
        System.out.printf("%14d | %7d | %5d | %9.2f | %6.2f | %22.2f | %6.2f | %22.2f | %6.2f%n", events,
                ours.tablets(), ours.scans(), ours.millis(0.5), ours.millis(0.99), ours.recordedMillis(0.5),
                ours.recordedMillis(0.99), bare.recordedMillis(0.5), bare.recordedMillis(0.99));
    }

    private void signatures(TravellerId closed) throws Exception {
        TravellerId cutting = release();
        story.advance(List.of(cutting), action -> action instanceof NextAction.Sign);
        System.out.println();
        System.out.println("signers | bare, a commit each/s | bare, grouped/s | signatures/s | of each | of grouped");
        Path folder = Files.createTempDirectory("brightseam-bench");
        for (int signers : new int[] {1, 8, 64}) {
            Signing signing = new Signing(shop, copies, cutting, CUT, closed, signers);
            long[] counts = turns(folder.resolve("signers" + signers), signing, signers);
            System.out.printf("%7d | %21.0f | %15.0f | %12.0f | %7.2f | %10.2f%n", signers, counts[0] / SECONDS,
                    counts[1] / SECONDS, counts[2] / SECONDS, (double) counts[2] / counts[0],
                    (double) counts[2] / counts[1]);
        }
        LedgerBench.delete(folder);
    }

    private long[] turns(Path folder, Signing signing, int signers) throws Exception {
        long[] counts = new long[3];
        try (BareCommits single = new BareCommits(folder.resolve("single"), 1);
                BareCommits grouped = new BareCommits(folder.resolve("grouped"), GROUP_MAX)) {
            List<LedgerBench.Contender> contenders = List.of(single, grouped, signing);
            long[][] next = new long[contenders.size()][signers];
            for (int turn = 0; turn <= TURNS; turn++) {
                signing.prepare();
                for (int i = 0; i < contenders.size(); i++) {
                    long stored = LedgerBench.stored(contenders.get(i), next[i], TURN_NANOS);
                    counts[i] += turn == 0 ? 0 : stored;
                }
            }
        }
        return counts;
    }

    /** Lots that stand at different steps before the wet line, where no time runs. */
    private List<TravellerId> inWork() {
        List<Step> steps = shop.bean(ProcedureLibrary.class).current("TUBE").orElseThrow().steps();
        List<TravellerId> lots = new ArrayList<>();
        for (int i = 0; i < LOTS_IN_WORK; i++) {
            TravellerId lot = release();
            story.advance(lot, steps.get(1 + i % 5).id());
            lots.add(lot);
        }
        return lots;
    }

    private void grow(int history, TravellerId closed, List<TravellerId> ofLongAgo) {
        long each = shop.bean(Ledger.class).version(StreamName.of("traveller", closed.value()));
        ofLongAgo.addAll(copies.of(closed, (int) Math.max(0, (history - events()) / each)));
    }

    private TravellerId release() {
        return shop.bean(Lots.class).releaseForTheBench(KIT, List.of(lot())).getFirst();
    }

    private static Lots.Lot lot() {
        return new Lots.Lot("HDF-9000-01", "Lot of the benchmark", 2, HEAT, "TUBE");
    }

    private long events() {
        return shop.bean(LastEntries.class).last(1).getFirst().position();
    }
}
