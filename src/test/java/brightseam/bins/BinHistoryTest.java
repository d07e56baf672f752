package brightseam.bins;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Samples;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Random commands, from a seed that every failure names. */
class BinHistoryTest {

    private static final BinId BIN = new BinId("B-0142");
    private static final int SEEDS = 400;
    private static final int COMMANDS = 120;

    private final Set<Fitness> reached = EnumSet.noneOf(Fitness.class);
    private int closings;
    private int moves;

    @Test
    void whatever_is_asked_of_a_bin_its_invariants_hold() {
        for (int seed = 0; seed < SEEDS; seed++) {
            run(seed);
        }
        assertEquals(EnumSet.allOf(Fitness.class), reached, "the commands reach every state");
        assertTrue(closings > SEEDS && moves > SEEDS, closings + " closings, " + moves + " moves");
    }

    private void run(int seed) {
        Random random = new Random(seed);
        List<BinEvent> history = new ArrayList<>();
        Set<TravellerId> expected = new TreeSet<>();
        Optional<Bin> bin = Optional.empty();
        for (int i = 0; i < COMMANDS; i++) {
            BinCommand command = command(random, i);
            if (BinDecider.decide(bin, command) instanceof Decision.Accepted<BinEvent> accepted) {
                for (BinEvent event : accepted.events()) {
                    bin.ifPresent(before -> check(before, event, "seed " + seed));
                    count(event, expected);
                    bin = Optional.of(Bin.evolve(bin, event));
                    history.add(event);
                }
            }
            bin.ifPresent(now -> assertEquals(expected, now.inside(), "seed " + seed));
            bin.map(Bin::fitness).ifPresent(reached::add);
        }
        assertEquals(bin, fold(history), "seed " + seed);
        assertEquals(fold(history), fold(history), "seed " + seed);
    }

    private static void check(Bin before, BinEvent event, String where) {
        assertFalse(before.retired(), where);
        if (event instanceof BinEvent.PutIn) {
            assertFalse(before.closed(), where);
            assertEquals(Fitness.FIT, before.fitness(), where);
            assertFalse(before.isFull(), where);
        }
        if (event instanceof BinEvent.TakenOut) {
            assertFalse(before.closed(), where);
        }
        if (before.fitness() == Fitness.SPENT) {
            assertFalse(event instanceof BinEvent.Closed || event instanceof BinEvent.Cleaned, where);
        }
        if (event instanceof BinEvent.Retired) {
            assertTrue(before.inside().isEmpty(), where);
        }
    }

    private void count(BinEvent event, Set<TravellerId> expected) {
        if (event instanceof BinEvent.PutIn put) {
            assertTrue(expected.add(put.traveller()));
            moves++;
        }
        if (event instanceof BinEvent.TakenOut out) {
            assertTrue(expected.remove(out.traveller()));
            moves++;
        }
        closings += event instanceof BinEvent.Closed ? 1 : 0;
    }

    private static BinCommand command(Random random, int at) {
        Origin origin = Samples.origin(at);
        TravellerId traveller = new TravellerId("T-" + random.nextInt(5));
        BinClass binClass = BinClass.values()[random.nextInt(4)];
        return switch (random.nextInt(at == 0 ? 1 : 60)) {
            case 0 -> new BinCommand.RegisterBin(BIN, binClass, capacity(random), origin);
            case 1 -> new BinCommand.RetireBin(BIN, origin);
            case 2 -> new BinCommand.ReportSoiled(BIN, "dust", origin);
            case 3, 4, 5, 6, 7, 8 -> new BinCommand.CloseBin(BIN, origin);
            case 9, 10, 11, 12, 13, 14 -> new BinCommand.OpenBin(BIN, random.nextInt(4) > 0, origin);
            case 15, 16, 17, 18, 19, 20, 21, 22 -> new BinCommand.DeclareCleaned(BIN, origin);
            case 23 -> new BinCommand.SetCapacity(BIN, Capacity.ofTravellers(capacity(random)), origin);
            default -> random.nextBoolean()
                    ? new BinCommand.PutIn(BIN, traveller, random.nextInt(6) > 0, origin)
                    : new BinCommand.TakeOut(BIN, traveller, origin);
        };
    }

    private static Optional<Integer> capacity(Random random) {
        return random.nextBoolean() ? Optional.empty() : Optional.of(1 + random.nextInt(4));
    }

    private static Optional<Bin> fold(List<BinEvent> events) {
        Optional<Bin> bin = Optional.empty();
        for (BinEvent event : events) {
            bin = Optional.of(Bin.evolve(bin, event));
        }
        return bin;
    }
}
