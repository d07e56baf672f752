package brightseam.trace;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Numbers of pieces as short text: {@code 1-4,7}. */
public final class PieceNumbers {

    private PieceNumbers() {}

    /** The text of {@code pieces}, each once, ascending; empty for none. */
    public static String write(Collection<Integer> pieces) {
        List<Integer> sorted = pieces.stream().distinct().sorted().toList();
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            int first = sorted.get(i);
            while (i + 1 < sorted.size() && sorted.get(i + 1) == sorted.get(i) + 1) {
                i++;
            }
            runs.add(first == sorted.get(i) ? "" + first : first + "-" + sorted.get(i));
        }
        return String.join(",", runs);
    }

    /** The numbers in {@code text}, ascending. */
    public static List<Integer> read(String text) {
        return Stream.of(text.split(",")).filter(run -> !run.isEmpty()).map(run -> run.split("-"))
                .flatMapToInt(ends -> IntStream.rangeClosed(
                        Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1])))
                .boxed().collect(Collectors.toUnmodifiableList());
    }
}
