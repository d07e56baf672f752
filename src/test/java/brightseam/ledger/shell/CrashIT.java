package brightseam.ledger.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills the real process under load and compares what it acknowledged with what is found afterwards. */
class CrashIT {

    private static final int ROUNDS = 5;
    private static final int ACKNOWLEDGED_MIN = 100;
    private static final long SEED = 20_310_304;

    @TempDir
    Path folder;

    @Test
    void what_was_acknowledged_survives_a_kill() throws Exception {
        Random random = new Random(SEED);
        Map<String, String> acknowledged = new TreeMap<>();
        for (int round = 0; round < ROUNDS; round++) {
            int before = acknowledged.size();
            killUnderLoad(random.nextInt(1_000)).forEach(line -> {
                String[] words = line.split(" ");
                acknowledged.put(words[0] + " " + words[1], words[2].substring(0, 64));
            });
            assertThat(acknowledged.size() - before).as("load of round %s", round).isGreaterThan(ACKNOWLEDGED_MIN);
            assertFound(acknowledged);
        }
        System.out.println(acknowledged.size() + " entries acknowledged, " + ROUNDS + " kills, none lost");
    }

    private void assertFound(Map<String, String> acknowledged) {
        try (TestLedger shop = TestLedger.inFolder(folder, Signatures::new)) {
            List<Entry> entries = shop.ledger().readAllAfter(0, Integer.MAX_VALUE);
            Map<String, String> found = new TreeMap<>();
            entries.forEach(entry -> found.put(entry.stream() + " " + entry.version(), entry.hash()));
            assertThat(found).containsAllEntriesOf(acknowledged);
            assertThat(ChainVerifier.verifyLedger(entries)).isEmpty();
            assertThat(shop.rebuild().compare()).isEmpty();
            for (Entry entry : entries) {
                if (entry.version() % 2 == 1 && entry.stream().identity().startsWith("T-")) {
                    assertThat(found)
                            .as("no half of a request")
                            .containsKey(entry.stream() + " " + (entry.version() + 1));
                }
            }
        }
    }

    private List<String> killUnderLoad(int millis) throws Exception {
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx256m",
                        "-cp", System.getProperty("java.class.path") + File.pathSeparator
                                + System.getProperty("surefire.test.class.path", ""),
                        CrashWriter.class.getName(), folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            List<String> lines = Collections.synchronizedList(new ArrayList<>());
            CountDownLatch underLoad = new CountDownLatch(ACKNOWLEDGED_MIN + 1);
            Thread reading = new Thread(() -> read(writer, lines, underLoad));
            reading.start();
            assertThat(underLoad.await(30, TimeUnit.SECONDS)).as("the writer works").isTrue();
            assertThat(writer.waitFor(millis, TimeUnit.MILLISECONDS)).as("ended by itself").isFalse();
            writer.destroyForcibly().waitFor();
            reading.join();
            return lines;
        } finally {
            writer.destroyForcibly();
        }
    }

    private static void read(Process writer, List<String> lines, CountDownLatch underLoad) {
        try (BufferedReader out = writer.inputReader()) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                if (line.matches("traveller/\\S+ \\d+ [0-9a-f]{64}\\.")) {
                    lines.add(line);
                    underLoad.countDown();
                }
            }
        } catch (IOException cutOff) {
            underLoad.countDown();
        }
    }
}
