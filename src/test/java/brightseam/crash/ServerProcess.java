package brightseam.crash;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;

/** A server in a process of its own, on a data folder; it can be killed as a power switch would. */
public final class ServerProcess implements AutoCloseable {

    private static final long START_SECONDS = 180;

    private final Process process;
    private final List<String> said = new ArrayList<>();
    private final CompletableFuture<Integer> port = new CompletableFuture<>();
    private final Thread reading;

    private ServerProcess(Process process) {
        this.process = process;
        this.reading = Thread.ofPlatform().daemon().start(this::read);
    }

    /** How a server is started besides its folder: its environment, what stands before {@code java}, and arguments. */
    public record Way(Map<String, String> environment, List<String> before, List<String> arguments) {

        /** As it is started in a shop. */
        public static Way plain(String... arguments) {
            return new Way(Map.of(), List.of(), List.of(arguments));
        }
    }

    /** Starts one on {@code folder}; it is not awaited. */
    static ServerProcess start(Path folder, Way way) throws IOException {
        List<String> command = new ArrayList<>(way.before());
        command.addAll(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx512m", "-Djava.awt.headless=true",
                "--enable-native-access=ALL-UNNAMED", "-cp", classpath(), CrashServer.class.getName(),
                "--brightseam.shop=demo", "--brightseam.demo-past=false", "--brightseam.data=" + folder,
                "--server.port=0", "--brightseam.pin-strength=4", "--brightseam.crash-desk=true",
                "--brightseam.greeting=false", "--brightseam.scanner-burst-millis=1500",
                "--brightseam.scanner-idle-millis=2000", "--brightseam.https-port=-1"));
        command.addAll(way.arguments());
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(way.environment());
        return new ServerProcess(builder.start());
    }

    /** Starts one on {@code folder} and returns when it answers. */
    public static ServerProcess running(Path folder, Way way) throws Exception {
        ServerProcess server = start(folder, way);
        try {
            server.port.get(START_SECONDS, TimeUnit.SECONDS);
            return server;
        } catch (Exception failure) {
            server.close();
            throw new IllegalStateException("the server does not start:\n" + server.said(), failure);
        }
    }

    /** Where it listens, without a slash at the end. */
    public String url() {
        return "http://localhost:" + port.join();
    }

    /** {@code kill -9}: nothing in the process can hold it up or tidy up. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
        reading.join();
    }

    /** Asks it to end as a service manager does, and waits. */
    public void stop() throws InterruptedException {
        process.destroy();
        process.waitFor();
        reading.join();
    }

    /** Waits for it to end by itself; answers its exit status. */
    int exit() throws InterruptedException {
        if (!process.waitFor(START_SECONDS, TimeUnit.SECONDS)) {
            throw new IllegalStateException("still running:\n" + said());
        }
        reading.join();
        return process.exitValue();
    }

    /** Whether it comes to answer; waits until it does or has ended. */
    boolean isRunning() throws Exception {
        try {
            port.get(START_SECONDS, TimeUnit.SECONDS);
            return true;
        } catch (ExecutionException ended) {
            return false;
        }
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** The last of what it printed. */
    String said() {
        synchronized (said) {
            return String.join("\n", said.subList(Math.max(0, said.size() - 60), said.size()));
        }
    }

    @Override
    public void close() throws InterruptedException {
        kill();
    }

    private void read() {
        try (BufferedReader out = process.inputReader()) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                synchronized (said) {
                    said.add(line);
                }
                if (line.startsWith(CrashServer.PORT)) {
                    port.complete(Integer.valueOf(line.substring(CrashServer.PORT.length())));
                }
            }
        } catch (IOException cutOff) {
            // Killed in the middle of a line.
        }
        port.completeExceptionally(new IllegalStateException("it ended"));
    }

    private static String classpath() {
        return System.getProperty("java.class.path") + File.pathSeparator
                + System.getProperty("surefire.test.class.path", "");
    }
}
