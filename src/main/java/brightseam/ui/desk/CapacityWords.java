package brightseam.ui.desk;

import brightseam.bins.Capacity;
import brightseam.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How much a bin takes, as lists and labels say it. */
public final class CapacityWords {

    private CapacityWords() {}

    /** {@code at most 4 travellers, 60 pieces, 1.2 m², 15 kg}; {@code no limit set}. */
    public static String of(Capacity capacity) {
        List<String> limits = Stream.of(
                        capacity.travellers().map(count -> Words.count(count, "traveller", "travellers")),
                        capacity.pieces().map(count -> Words.count(count, "piece", "pieces")),
                        capacity.areaSquareMetres().map(area -> Words.quantity(area, "m²")),
                        capacity.massKilograms().map(mass -> Words.quantity(mass, "kg")))
                .flatMap(Optional::stream).toList();
        return limits.isEmpty() ? "no limit set" : "at most " + String.join(", ", limits);
    }
}
