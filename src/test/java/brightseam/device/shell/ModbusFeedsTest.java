package brightseam.device.shell;

import static brightseam.device.SampleMeters.CHAMBER;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.ModbusPoint;
import brightseam.device.RegisterKind;
import brightseam.kernel.SupplyId;
import brightseam.ledger.shell.Subscription;
import brightseam.ledger.shell.TestLedger;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** Against Modbus TCP servers that are programs of their own. */
class ModbusFeedsTest {

    private final TestLedger database = TestLedger.inMemory(MeterShop.PROJECTIONS.toArray(Function[]::new));
    private final MeterShop shop = new MeterShop(database.ledger(), database.jdbc());
    private final Readings readings = new Readings(database.ledger(), database.jdbc(),
            new JdbcTransactionManager(database.source()), shop.meters(), shop.clock());
    private final ModbusFeeds feeds = new ModbusFeeds(database.ledger(), shop.meters(), readings, shop.clock());
    private final List<Device> devices = new ArrayList<>();

    @AfterEach
    void close() throws Exception {
        feeds.close();
        for (Device device : devices) {
            device.kill();
        }
        readings.close();
        database.close();
    }

    /** One server process. */
    private static final class Device {
        private final Process process;
        private final BufferedReader out;

        Device(int port) throws IOException {
            process = new ProcessBuilder(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx128m",
                    "-cp", System.getProperty("java.class.path") + File.pathSeparator
                            + System.getProperty("surefire.test.class.path", ""),
                    ModbusProcess.class.getName(), Integer.toString(port))
                    .redirectError(ProcessBuilder.Redirect.DISCARD).start();
            out = process.inputReader();
            expect("ready");
        }

        void set(String kind, int register, String hex) throws IOException {
            process.outputWriter().write(kind + " " + register + " " + hex + "\n");
            process.outputWriter().flush();
            expect("set");
        }

        void kill() throws InterruptedException {
            process.destroyForcibly().waitFor();
        }

        private void expect(String word) throws IOException {
            String line = out.readLine();
            while (line != null && !line.equals(word)) {
                line = out.readLine();
            }
            assertThat(line).isEqualTo(word);
        }
    }

    private Device device(int port) throws IOException {
        Device device = new Device(port);
        devices.add(device);
        return device;
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private SupplyId meter(String id, int port, boolean input, int register, RegisterKind kind, String scale) {
        return shop.register(new Meter(new SupplyId(id), CHAMBER, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM, -1000,
                100_000, 0.1, Duration.ofMillis(50), Duration.ofSeconds(8), new Feed.Modbus(new ModbusPoint(
                        "127.0.0.1", port, 1, input, register, kind, new BigDecimal(scale), BigDecimal.ZERO)))).id();
    }

    /** The first state of {@code meter} from now on that is as {@code wanted}. */
    private MeterNow await(SupplyId meter, Predicate<MeterNow> wanted) throws InterruptedException {
        LinkedBlockingQueue<MeterNow> heard = new LinkedBlockingQueue<>();
        try (Subscription following = readings.follow(meter, heard::add)) {
            MeterNow now = heard.poll(60, TimeUnit.SECONDS);
            while (now != null && !wanted.test(now)) {
                now = heard.poll(60, TimeUnit.SECONDS);
            }
            assertThat(now).as("%s in time", meter).isNotNull();
            return now;
        }
    }

    private void awaitValue(SupplyId meter, double value) throws InterruptedException {
        await(meter, now -> now.last().filter(last -> last.value() == value).isPresent());
    }

    @Test
    void values_of_every_kind_come_in_and_follow_the_device() throws Exception {
        int port = freePort();
        Device device = device(port);
        device.set("holding", 0, "4144");
        device.set("holding", 1, "CCCD");
        device.set("holding", 10, "CCCD");
        device.set("holding", 11, "4144");
        device.set("input", 20, "FFFE");
        device.set("holding", 30, "FFFE");
        device.set("holding", 40, "0001");
        device.set("holding", 41, "0000");
        SupplyId real = meter("G-0601", port, false, 0, RegisterKind.FLOAT32, "1");
        SupplyId swapped = meter("G-0602", port, false, 10, RegisterKind.FLOAT32_LOW_WORD_FIRST, "1");
        SupplyId signed = meter("G-0603", port, true, 20, RegisterKind.INT16, "0.1");
        SupplyId unsigned = meter("G-0604", port, false, 30, RegisterKind.UINT16, "1");
        SupplyId whole = meter("G-0605", port, false, 40, RegisterKind.INT32, "0.001");
        feeds.start();
        awaitValue(real, 12.3);
        awaitValue(swapped, 12.3);
        awaitValue(signed, -0.2);
        awaitValue(unsigned, 65_534);
        awaitValue(whole, 65.536);
        device.set("holding", 30, "0007");
        awaitValue(unsigned, 7);
        assertThat(feeds.failure(real)).isEmpty();
    }

    @Test
    void a_device_that_is_gone_holds_up_no_other_and_is_heard_again_once_it_is_back() throws Exception {
        int gonePort = freePort();
        int otherPort = freePort();
        Device gone = device(gonePort);
        Device other = device(otherPort);
        gone.set("holding", 0, "0001");
        other.set("holding", 0, "0002");
        SupplyId lost = meter("G-0601", gonePort, false, 0, RegisterKind.UINT16, "1");
        SupplyId kept = meter("G-0602", otherPort, false, 0, RegisterKind.UINT16, "1");
        feeds.start();
        awaitValue(lost, 1);
        awaitValue(kept, 2);
        gone.kill();
        other.set("holding", 0, "0003");
        awaitValue(kept, 3);
        Device back = device(gonePort);
        back.set("holding", 0, "0004");
        awaitValue(lost, 4);
        assertThat(feeds.failure(lost)).isEmpty();
    }

    @Test
    void a_register_that_the_device_lacks_is_said_and_its_other_registers_are_read_on() throws Exception {
        int port = freePort();
        Device device = device(port);
        device.set("holding", 0, "0001");
        SupplyId good = meter("G-0601", port, false, 0, RegisterKind.UINT16, "1");
        feeds.start();
        awaitValue(good, 1);
        SupplyId wrongUnit = shop.register(new Meter(new SupplyId("G-0609"), CHAMBER, MeterPlace.CHAMBER,
                MeterQuantity.OXYGEN_PPM, 0, 1000, 0.1, Duration.ofMillis(50), Duration.ofSeconds(8),
                new Feed.Modbus(new ModbusPoint("127.0.0.1", port, 9, false, 0, RegisterKind.UINT16, BigDecimal.ONE,
                        BigDecimal.ZERO)))).id();
        device.set("holding", 0, "0005");
        awaitValue(good, 5);
        await(good, now -> feeds.failure(wrongUnit).isPresent());
        assertThat(readings.now(wrongUnit).last()).isEmpty();
        assertThat(feeds.failure(good)).isEmpty();
    }
}
