package brightseam.scan;

/** The symbologies that our own labels can carry. */
public enum LabelSymbol {
    /** Data Matrix ECC 200, square (ISO/IEC 16022). */
    DATA_MATRIX,
    /** QR code (ISO/IEC 18004), error correction level M. */
    QR
}
