package brightseam.scan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** GS1 element strings: application identifiers and values, run together (GS1 General Specifications 7.8). */
final class ElementString {

    private final String text;
    private final LocalDate today;
    private final List<Field> fields = new ArrayList<>();
    private int position;

    private ElementString(String text, LocalDate today) {
        this.text = text;
        this.today = today;
    }

    /** The fields of {@code text}, every check digit and date checked; leading and trailing separators are skipped. */
    static Fields parse(String text, LocalDate today) {
        return new ElementString(text, today).run();
    }

    private Fields run() {
        skipSeparators();
        while (position < text.length()) {
            Optional<UnreadableReason> failure = field();
            if (failure.isPresent()) {
                return new Fields.Failed(failure.get());
            }
            skipSeparators();
        }
        return fields.isEmpty() ? new Fields.Failed(UnreadableReason.EMPTY) : new Fields.Found(List.copyOf(fields));
    }

    private void skipSeparators() {
        while (position < text.length() && text.charAt(position) == Separators.GS) {
            position++;
        }
    }

    private Optional<UnreadableReason> field() {
        Optional<ApplicationIdentifier> known = ApplicationIdentifier.at(text, position);
        if (known.isEmpty()) {
            return Optional.of(UnreadableReason.IDENTIFIER_UNKNOWN);
        }
        ApplicationIdentifier ai = known.get();
        int start = position + ai.identifierLength();
        int separator = text.indexOf(Separators.GS, start);
        int limit = separator < 0 ? text.length() : separator;
        int end = ai.endsByLength() ? Math.min(start + ai.lengthMax(), limit) : limit;
        String identifier = text.substring(position, start);
        String value = text.substring(start, end);
        position = end;
        return fault(ai, identifier, value).or(() -> {
            fields.add(made(ai, identifier, value));
            return Optional.empty();
        });
    }

    private Optional<UnreadableReason> fault(ApplicationIdentifier ai, String identifier, String value) {
        boolean inForm = value.length() >= ai.lengthMin() && value.length() <= ai.lengthMax()
                && Gs1CheckDigit.isDigits(identifier)
                && (ai.numeric() ? Gs1CheckDigit.isDigits(value) : isPrintable(value))
                && !(ai.hasDecimals() && identifier.charAt(3) > '5');
        if (!inForm) {
            return Optional.of(UnreadableReason.FIELD_OUT_OF_FORM);
        }
        if (ai.hasCheckDigit() && !Gs1CheckDigit.closes(value)) {
            return Optional.of(UnreadableReason.CHECK_DIGIT_WRONG);
        }
        return ai.isDate() && Gs1Date.read(value, today).isEmpty()
                ? Optional.of(UnreadableReason.DATE_IMPOSSIBLE) : Optional.empty();
    }

    private Field made(ApplicationIdentifier ai, String identifier, String value) {
        if (ai.isDate()) {
            return new Field(identifier, value, ai.meaning(), Gs1Date.read(value, today));
        }
        if (ai.hasDecimals()) {
            BigDecimal measured = new BigDecimal(value).movePointLeft(identifier.charAt(3) - '0');
            return Field.text(identifier, measured.toPlainString(), ai.meaning());
        }
        return Field.text(identifier, value, ai.meaning());
    }

    private static boolean isPrintable(String value) {
        return value.chars().allMatch(c -> c > 0x20 && c < 0x7F);
    }
}
