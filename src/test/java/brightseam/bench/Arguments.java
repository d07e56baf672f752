package brightseam.bench;

import java.util.Arrays;
import java.util.List;

/** What a measurement is told: its arguments, or {@code -DbenchArguments="…"} of the command. */
public final class Arguments {

    private Arguments() {}

    /** The words of {@code args}, else of the command; empty where there are none. */
    public static List<String> of(String[] args) {
        String[] given = args.length > 0 ? args : System.getProperty("bench.arguments", "").split(" +");
        return Arrays.stream(given).filter(word -> !word.isBlank()).toList();
    }
}
