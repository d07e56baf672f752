package brightseam.scan;

/** Why nothing was made of a scan. */
public enum UnreadableReason {
    /** Nothing arrived. */
    EMPTY,
    /** Longer than any label: {@link ScanParser#LENGTH_MAX} characters. */
    TOO_LONG,
    /** Control characters where none belong. */
    CONTROL_CHARACTERS,
    /** The check character of one of our labels does not fit. */
    CHECK_CHARACTER_WRONG,
    /** An identity was typed without its check character, or a digit as check character without a space before. */
    CHECK_CHARACTER_MISSING,
    /** Typed without hyphens, and more than one identity fits. */
    HYPHENS_NEEDED,
    /** An envelope whose separators the scanner swallowed: its set-up has to be mended. */
    SEPARATORS_MISSING,
    /** An envelope without its end. */
    ENVELOPE_CUT,
    /** An envelope in a format other than 05 and 06. */
    FORMAT_UNKNOWN,
    /** A field without an identifier, or with nothing after it. */
    FIELD_MALFORMED,
    /** An application identifier that the table does not hold, so the fields behind it cannot be told. */
    IDENTIFIER_UNKNOWN,
    /** A field longer or shorter than its identifier allows, or of the wrong characters. */
    FIELD_OUT_OF_FORM,
    /** A check digit that does not fit. */
    CHECK_DIGIT_WRONG,
    /** A day that is in no calendar. */
    DATE_IMPOSSIBLE,
    /** Separators, but no structure that is known. */
    STRUCTURE_UNKNOWN
}
