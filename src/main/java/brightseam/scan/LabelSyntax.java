package brightseam.scan;

/** How the fields of a label are marked. */
public enum LabelSyntax {
    /** Data identifiers of ANSI MH10.8.2. */
    DATA_IDENTIFIERS,
    /** GS1 element strings. */
    ELEMENT_STRINGS,
    /** Both, in one envelope of ISO/IEC 15434. */
    MIXED
}
