package brightseam.procedure.shell;

import brightseam.procedure.Problem;
import brightseam.procedure.Procedure;
import brightseam.procedure.shell.ProcedureLoader.Loaded;
import brightseam.procedure.shell.ProcedureLoader.Loading;
import brightseam.procedure.shell.ProcedureLoader.Unsound;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every procedure file of one folder, by file name. Two files for one procedure are both refused. */
final class ProcedureFolder {

    private ProcedureFolder() {}

    /**
     * What became of each {@code .yaml} and {@code .yml} file of {@code folder}; empty where there is no such folder.
     *
     * @throws IOException where the folder itself cannot be listed
     */
    static Map<String, Loading> read(Path folder, ProcedureLoader loader) throws IOException {
        Map<String, Loading> files = new TreeMap<>();
        if (!Files.isDirectory(folder)) {
            return files;
        }
        try (Stream<Path> paths = Files.list(folder)) {
            for (Path path : paths.filter(ProcedureFolder::isProcedureFile).toList()) {
                files.put(path.getFileName().toString(), load(path, loader));
            }
        }
        return refuseTwins(files);
    }

    private static boolean isProcedureFile(Path path) {
        String name = path.getFileName().toString();
        return (name.endsWith(".yaml") || name.endsWith(".yml")) && Files.isRegularFile(path);
    }

    private static Loading load(Path path, ProcedureLoader loader) {
        String file = path.getFileName().toString();
        try (InputStream in = Files.newInputStream(path)) {
            return loader.load(file, in.readNBytes(FileText.SIZE_MAX_BYTES + 1));
        } catch (IOException unreadable) {
            return new Unsound(Optional.empty(),
                    List.of(new Problem(file, 1, 1, "a file that cannot be read", "a readable file")));
        }
    }

    private static Map<String, Loading> refuseTwins(Map<String, Loading> files) {
        Map<String, List<String>> byId = new TreeMap<>();
        files.forEach((file, loading) -> procedure(loading).ifPresent(procedure ->
                byId.computeIfAbsent(procedure.ref().id(), id -> new ArrayList<>()).add(file)));
        byId.values().removeIf(twins -> twins.size() == 1);
        byId.forEach((id, twins) -> twins.forEach(file -> files.put(file, twin(id, file, twins))));
        return files;
    }

    private static Unsound twin(String id, String file, List<String> twins) {
        String others = twins.stream().filter(other -> !other.equals(file)).collect(Collectors.joining(", "));
        return new Unsound(Optional.of(id), List.of(new Problem(
                file, 1, 1, "procedure " + id + ", which is also in " + others, "one file for each procedure")));
    }

    private static Optional<Procedure> procedure(Loading loading) {
        return switch (loading) {
            case Loaded loaded -> Optional.of(loaded.procedure());
            case Unsound unsound -> Optional.empty();
        };
    }
}
