package brightseam.check.shell;

import brightseam.kernel.shell.OwnerAlone;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * Where a running server hears commands of its own machine: in its data folder, for the owner alone.
 *
 * @param port on the loopback address
 * @param token new at each start; whoever can read the folder may give commands
 */
record ControlFile(int port, String token) {

    static final String NAME = "control.json";

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    /** Shows no token, so that none gets into a log. */
    @Override
    public String toString() {
        return "control on port " + port;
    }

    void write(Path data) throws IOException {
        Path fresh = data.resolve(NAME + ".part");
        Files.deleteIfExists(fresh);
        try (var out = Files.newByteChannel(fresh,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), OwnerAlone.file(data))) {
            out.write(java.nio.ByteBuffer.wrap(MAPPER.writeValueAsString(this).getBytes(StandardCharsets.UTF_8)));
        }
        Files.move(fresh, data.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
    }

    static Optional<ControlFile> read(Path data) {
        try {
            return Optional.of(MAPPER.readValue(Files.readAllBytes(data.resolve(NAME)), ControlFile.class));
        } catch (IOException | JacksonException notThere) {
            return Optional.empty();
        }
    }
}
