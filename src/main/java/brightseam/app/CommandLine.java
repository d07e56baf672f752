package brightseam.app;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What was written behind a command's word: options such as {@code --brightseam.data=...} and {@code --with-keys}, and
 * the words between them.
 *
 * @param options each with what it was given, in order; an option without a value was given the empty text
 * @param words what is no option
 */
record CommandLine(Map<String, List<String>> options, List<String> words) {

    private static final String DATA = "brightseam.data";
    private static final String KEYS = "brightseam.keys";

    static CommandLine of(List<String> arguments) {
        Map<String, List<String>> options = new LinkedHashMap<>();
        List<String> words = new ArrayList<>();
        for (String argument : arguments) {
            if (argument.startsWith("--")) {
                String[] parts = argument.substring(2).split("=", 2);
                options.computeIfAbsent(parts[0], name -> new ArrayList<>()).add(parts.length == 2 ? parts[1] : "");
            } else {
                words.add(argument);
            }
        }
        return new CommandLine(options, List.copyOf(words));
    }

    /** The first option that is neither in {@code known} nor a setting of the server; empty where there is none. */
    Optional<String> unknown(Set<String> known) {
        return options.keySet().stream()
                .filter(name -> !known.contains(name) && !name.startsWith("brightseam.") && !name.startsWith("spring."))
                .findFirst();
    }

    boolean has(String option) {
        return options.containsKey(option);
    }

    List<String> all(String option) {
        return options.getOrDefault(option, List.of());
    }

    Optional<String> last(String option) {
        List<String> given = all(option);
        return given.isEmpty() ? Optional.empty() : Optional.of(given.getLast());
    }

    /** The data folder, as the server would take it. */
    Path data() {
        return Path.of(last(DATA).orElse("./data")).toAbsolutePath().normalize();
    }

    /** Whether the data folder is there; where not, says on {@code out} how to name one. */
    boolean isDataThere(PrintStream out) {
        boolean there = Files.isDirectory(data());
        if (!there) {
            out.println("There is no data folder " + data() + ". Name one with --brightseam.data=<folder>.");
        }
        return there;
    }

    /** The folder of the keys of the data folder {@code data}, as the server would take it. */
    Path keys(Path data) {
        return last(KEYS).filter(text -> !text.isBlank()).map(Path::of).orElse(data.resolve("keys"));
    }
}
