package brightseam.bench;

import brightseam.kernel.TravellerId;
import brightseam.ledger.Append;
import brightseam.ledger.NewEvent;
import brightseam.ledger.shell.TestLedger;
import brightseam.trace.Reach;
import brightseam.trace.Reached;
import brightseam.trace.ThingKind;
import brightseam.trace.TraceQuestion;
import brightseam.trace.shell.ManyContacts;
import brightseam.trace.shell.TraceTables;
import brightseam.trace.shell.Traces;
import brightseam.traveller.Stories;
import brightseam.traveller.shell.TravellerStreams;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.function.IntToLongFunction;

/**
 * How long the trace takes over a million contacts in a database on disk, both ways, as a screen asks: from a thing,
 * the whole answer with its counts and the spans of the first page; from a piece, everything that touched it and what
 * was beside it. Then what keeping the contacts costs each event that is stored. Argument: contacts, else a million.
 */
public final class TraceBench {

    private static final int PAGE = 50;
    private static final int QUESTIONS = 100;
    private static final int RECORDS = 40;
    private static final int WARM_UP = 5;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Random random = new Random(7);

    private TraceBench() {}

    /** Runs and prints. */
    public static void main(String[] args) throws Exception {
        long contacts = args.length > 0 ? Long.parseLong(args[0]) : 1_000_000;
        Path folder = Files.createTempDirectory("brightseam-bench");
        try {
            ManyContacts.Made made;
            try (TestLedger shop = TestLedger.inFolder(folder.resolve("trace"))) {
                long start = System.nanoTime();
                made = new ManyContacts().store(shop.source(), contacts);
                System.out.printf("%,d contacts of %,d travellers, stored in %.0f s%n%n", made.contacts(),
                        made.lots(), (System.nanoTime() - start) / 1e9);
            }
            try (TestLedger shop = TestLedger.inFolder(folder.resolve("trace"))) {
                new TraceBench().ask(new Traces(shop.jdbc()), made);
            }
            cost(folder);
        } finally {
            LedgerBench.delete(folder);
        }
    }

    private void ask(Traces traces, ManyContacts.Made made) {
        System.out.println("asked from | contacts in the answer | travellers | median/ms | p99/ms"
                + " | of it computing: median/ms | p99/ms");
        for (ThingKind kind : List.of(ThingKind.HEAT, ThingKind.KIT, ThingKind.BATH, ThingKind.GLOVES,
                ThingKind.WIPES, ThingKind.SOLVENT, ThingKind.BIN, ThingKind.GAUGE, ThingKind.STATION,
                ThingKind.PERSON)) {
            fromThing(traces, made, kind);
        }
        long[] found = new long[2];
        Times nanos = times(made, lot -> {
            found[0] = traces.touches(lot, 1).size();
            found[1] = traces.beside(lot).size();
            return found[0];
        });
        print("PIECE", found[0], found[1], nanos);
        System.out.println("(for a piece the third number is what was beside it)");
    }

    private void fromThing(Traces traces, ManyContacts.Made made, ThingKind kind) {
        Reach[] last = new Reach[1];
        List<TraceQuestion> questions = random.ints(QUESTIONS, 0, made.lots())
                .mapToObj(lot -> TraceQuestion.of(ManyContacts.thing(traces, kind, made.lot(lot)))).toList();
        Times nanos = timed(QUESTIONS, i -> {
            last[0] = traces.reach(questions.get(i));
            List<TravellerId> page = last[0].travellers().stream().limit(PAGE).map(Reached::now)
                    .map(now -> now.traveller()).toList();
            return last[0].counts().contacts() + traces.touches(questions.get(i), page).size();
        });
        print(kind.name(), last[0].counts().contacts(), last[0].counts().travellers(), nanos);
    }

    /** What each question took, and what of that this thread was computing: the rest the machine did other things. */
    private record Times(long[] wall, long[] cpu) {}

    private Times times(ManyContacts.Made made, Function<TravellerId, Long> ask) {
        int[] lots = random.ints(QUESTIONS, 0, made.lots()).toArray();
        return timed(QUESTIONS, i -> ask.apply(made.lot(lots[i])));
    }

    private static Times timed(int count, IntToLongFunction ask) {
        Times times = new Times(new long[count], new long[count]);
        for (int i = -WARM_UP; i < count; i++) {
            long wall = System.nanoTime();
            long cpu = THREADS.getCurrentThreadCpuTime();
            if (ask.applyAsLong(Math.max(0, i)) == 0) {
                throw new IllegalStateException("nothing found");
            }
            if (i >= 0) {
                times.wall()[i] = System.nanoTime() - wall;
                times.cpu()[i] = THREADS.getCurrentThreadCpuTime() - cpu;
            }
        }
        return times;
    }

    private static void print(String from, long contacts, long travellers, Times times) {
        System.out.printf("%10s | %,22d | %,10d | %9.1f | %6.1f | %26.1f | %6.1f%n", from, contacts, travellers,
                millis(times.wall(), 50), millis(times.wall(), 99), millis(times.cpu(), 50), millis(times.cpu(), 99));
    }

    private static double millis(long[] nanos, int percent) {
        long[] sorted = nanos.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length * percent / 100] / 1e6;
    }

    /** The same records stored one event at a time, with and without the tables of contacts; turns of a record each. */
    private static void cost(Path folder) {
        List<NewEvent> record = TravellerStreams.KIND.write(Stories.closed());
        try (TestLedger bare = TestLedger.inFolder(folder.resolve("bare"));
                TestLedger traced = TestLedger.inFolder(folder.resolve("traced"), TraceTables::of)) {
            long[] nanos = new long[2];
            for (int i = 0; i < 2 * RECORDS; i++) {
                nanos[0] = i == RECORDS ? 0 : nanos[0];
                nanos[1] = i == RECORDS ? 0 : nanos[1];
                nanos[0] += store(bare, "T-" + (3_000 + i), record);
                nanos[1] += store(traced, "T-" + (3_000 + i), record);
            }
            double events = (double) RECORDS * record.size();
            System.out.printf("%nstoring one event: %.0f µs without the contacts, %.0f µs with them%n",
                    nanos[0] / events / 1e3, nanos[1] / events / 1e3);
        }
    }

    private static long store(TestLedger shop, String label, List<NewEvent> record) {
        long start = System.nanoTime();
        for (int i = 0; i < record.size(); i++) {
            NewEvent event = record.get(i);
            shop.ledger().append(List.of(new Append(TravellerStreams.KIND.stream(label), i, List.of(new NewEvent(
                    event.type(), event.json().replace("\"T-1042\"", '"' + label + '"'))))));
        }
        return System.nanoTime() - start;
    }
}
