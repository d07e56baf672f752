package brightseam.scan;

import java.util.Optional;

/**
 * A code without a structure that can be told for certain.
 *
 * @param text printable text from outside, to be escaped wherever it is shown
 */
public record PlainCode(String text) implements ScanReading {

    /**
     * What the code says if it is one field with a data identifier in front, as on linear supplier labels. A plain
     * code can look the same by accident, so only a screen that asks for {@code meaning} right now calls this.
     */
    public Optional<String> readAs(Meaning meaning) {
        return DataIdentifier.field(text).filter(field -> field.meaning() == meaning).map(Field::value);
    }
}
