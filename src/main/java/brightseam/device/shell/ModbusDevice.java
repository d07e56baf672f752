package brightseam.device.shell;

import brightseam.device.Meter;
import brightseam.device.ModbusPoint;
import brightseam.device.RegisterValue;
import brightseam.kernel.SupplyId;
import com.digitalpetri.modbus.client.ModbusTcpClient;
import com.digitalpetri.modbus.exceptions.ModbusExecutionException;
import com.digitalpetri.modbus.exceptions.ModbusResponseException;
import com.digitalpetri.modbus.exceptions.ModbusTimeoutException;
import com.digitalpetri.modbus.pdu.ReadHoldingRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadInputRegistersRequest;
import com.digitalpetri.modbus.tcp.client.NettyTcpClientTransport;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One device that speaks Modbus TCP: its meters are asked on a thread of its own, each when it is due, so that a device
 * that does not answer holds up no other. After a failure it waits, twice as long each time, and connects anew.
 *
 * <p>One question at a time, as many devices take no more. A meter that is not answered is asked less and less often;
 * each try holds up the others of its device by the time that an answer may take.
 */
final class ModbusDevice implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(ModbusDevice.class);
    private static final Duration ANSWER_MAX = Duration.ofSeconds(2);
    private static final Duration SILENCE_MAX = Duration.ofSeconds(5);
    private static final long PAUSE_MILLIS_MIN = 500;
    private static final long PAUSE_MILLIS_MAX = 30_000;

    private final String host;
    private final int port;
    private final Taker taker;
    private final Thread thread;
    private final Map<Meter, Long> dueNanos = new HashMap<>();
    private final Map<Meter, Long> pauseMillis = new HashMap<>();
    private long answeredNanos;
    private volatile Map<Meter, ModbusPoint> meters = Map.of();
    private final Map<SupplyId, String> failures = new ConcurrentHashMap<>();
    private volatile String failure = "";
    private volatile boolean closed;

    /** Asks {@code host} at {@code port} and hands what it says to {@code taker}. */
    ModbusDevice(String host, int port, Taker taker) {
        this.host = host;
        this.port = port;
        this.taker = taker;
        this.thread = Thread.ofPlatform().daemon().name("modbus-" + host + "-" + port).start(this::run);
    }

    /** Takes one value; called on the device's thread. */
    interface Taker {
        void take(Meter meter, double value);
    }

    /** From now on these meters are asked. */
    void ask(Map<Meter, ModbusPoint> next) {
        meters = Map.copyOf(next);
    }

    /** Why {@code meter} was not answered the last time; empty where it was. */
    Optional<String> failure(SupplyId meter) {
        return Optional.of(failure).filter(reason -> !reason.isEmpty())
                .or(() -> Optional.ofNullable(failures.get(meter)));
    }

    @Override
    public void close() {
        closed = true;
        thread.interrupt();
    }

    private void run() {
        long pause = PAUSE_MILLIS_MIN;
        while (!closed) {
            ModbusTcpClient client = client();
            long start = System.nanoTime();
            try {
                client.connect();
                answeredNanos = System.nanoTime();
                failure = "";
                askForGood(client);
            } catch (InterruptedException ended) {
                closed = true;
            } catch (ModbusExecutionException | ModbusTimeoutException | RuntimeException broken) {
                fail(broken);
            } finally {
                client.disconnectAsync();
            }
            boolean heldLong = System.nanoTime() - start > TimeUnit.MILLISECONDS.toNanos(PAUSE_MILLIS_MAX);
            pause = heldLong ? PAUSE_MILLIS_MIN : pause;
            waitFor(pause);
            pause = Math.min(PAUSE_MILLIS_MAX, 2 * pause);
        }
    }

    private void askForGood(ModbusTcpClient client)
            throws ModbusExecutionException, ModbusTimeoutException, InterruptedException {
        while (!closed) {
            long next = System.nanoTime() + TimeUnit.SECONDS.toNanos(1);
            for (Map.Entry<Meter, ModbusPoint> one : meters.entrySet()) {
                next = Math.min(next, askWhenDue(client, one.getKey(), one.getValue()));
            }
            TimeUnit.NANOSECONDS.sleep(Math.max(0, next - System.nanoTime()));
        }
    }

    /** Answers when the meter is due next. A meter that fell behind is not asked more often to make up for it. */
    private long askWhenDue(ModbusTcpClient client, Meter meter, ModbusPoint point)
            throws ModbusExecutionException, ModbusTimeoutException {
        long now = System.nanoTime();
        long due = dueNanos.getOrDefault(meter, now);
        if (due - now > 0) {
            return due;
        }
        boolean answered = isAnswered(client, meter, point);
        long pause = answered ? 0 : Math.min(PAUSE_MILLIS_MAX, 2 * pauseMillis.getOrDefault(meter, PAUSE_MILLIS_MIN));
        pauseMillis.put(meter, Math.max(PAUSE_MILLIS_MIN, pause));
        long next = Math.max(due + meter.every().toNanos(), System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(pause));
        dueNanos.put(meter, next);
        return next;
    }

    /** Whether the device gave a number. Throws where it has said nothing for so long that the connection is dead. */
    private boolean isAnswered(ModbusTcpClient client, Meter meter, ModbusPoint point)
            throws ModbusExecutionException, ModbusTimeoutException {
        try {
            OptionalDouble value = RegisterValue.of(point, registers(client, point));
            answeredNanos = System.nanoTime();
            if (value.isEmpty()) {
                return refused(meter, "the register holds no number");
            }
            failures.remove(meter.id());
            taker.take(meter, value.getAsDouble());
            return true;
        } catch (ModbusResponseException refused) {
            answeredNanos = System.nanoTime();
            return refused(meter, refused.getMessage());
        } catch (ModbusTimeoutException silent) {
            if (System.nanoTime() - answeredNanos > SILENCE_MAX.toNanos()) {
                throw silent;
            }
            return refused(meter, "no answer in " + ANSWER_MAX.toSeconds() + " s");
        }
    }

    private boolean refused(Meter meter, String reason) {
        if (!reason.equals(failures.put(meter.id(), reason))) {
            LOG.warn("device {}:{} gives no reading of {}: {}", host, port, meter.id(), reason);
        }
        return false;
    }

    private static byte[] registers(ModbusTcpClient client, ModbusPoint point)
            throws ModbusExecutionException, ModbusTimeoutException, ModbusResponseException {
        int count = point.kind().registers();
        return point.input()
                ? client.readInputRegisters(point.unit(),
                        new ReadInputRegistersRequest(point.register(), count)).registers()
                : client.readHoldingRegisters(point.unit(),
                        new ReadHoldingRegistersRequest(point.register(), count)).registers();
    }

    private ModbusTcpClient client() {
        return ModbusTcpClient.create(
                NettyTcpClientTransport.create(config -> config.setHostname(host).setPort(port)
                        .setConnectTimeout(ANSWER_MAX).setConnectPersistent(false)),
                config -> config.setRequestTimeout(ANSWER_MAX));
    }

    private void fail(Exception broken) {
        String reason = String.valueOf(broken.getMessage());
        if (!reason.equals(failure)) {
            LOG.warn("device {}:{} does not answer: {}", host, port, reason);
        }
        failure = reason;
    }

    private void waitFor(long millis) {
        try {
            if (!closed) {
                TimeUnit.MILLISECONDS.sleep(millis);
            }
        } catch (InterruptedException ended) {
            closed = true;
        }
    }
}
