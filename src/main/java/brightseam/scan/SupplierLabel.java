package brightseam.scan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A supplier's label in a structure that checked out.
 *
 * @param syntax how the fields were marked
 * @param fields in the order of the symbol, at least one
 */
public record SupplierLabel(LabelSyntax syntax, List<Field> fields) implements ScanReading {

    /** Copies the list. */
    public SupplierLabel {
        fields = List.copyOf(fields);
    }

    /** The value with {@code meaning}; empty where there is none and where two fields disagree. */
    public Optional<String> value(Meaning meaning) {
        List<String> values = fields.stream()
                .filter(field -> field.meaning() == meaning).map(Field::value).distinct().toList();
        return values.size() == 1 ? Optional.of(values.getFirst()) : Optional.empty();
    }

    /** The day with {@code meaning}; empty where there is none and where two fields disagree. */
    public Optional<LocalDate> date(Meaning meaning) {
        List<LocalDate> dates = fields.stream()
                .filter(field -> field.meaning() == meaning).flatMap(field -> field.date().stream())
                .distinct().toList();
        return dates.size() == 1 ? Optional.of(dates.getFirst()) : Optional.empty();
    }

    /** The part number: the customer's, else the supplier's. */
    public Optional<String> partNumber() {
        return value(Meaning.PART_NUMBER).or(() -> value(Meaning.SUPPLIER_PART_NUMBER));
    }

    /** The lot, batch or heat. */
    public Optional<String> lot() {
        return value(Meaning.LOT);
    }
}
