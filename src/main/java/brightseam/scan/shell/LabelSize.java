package brightseam.scan.shell;

import brightseam.scan.LabelKind;

/**
 * How large a label is.
 *
 * @param widthMillimetres across
 * @param heightMillimetres down
 */
record LabelSize(float widthMillimetres, float heightMillimetres) {

    /** Points of a PDF in a millimetre. */
    static final float POINTS_PER_MILLIMETRE = 72f / 25.4f;

    /** Label stock that hand and desk printers take; invented for this shop. */
    static final LabelSize STOCK = new LabelSize(100, 50);
    /** ISO/IEC 7810 ID-1, the size of a card in a badge holder. */
    static final LabelSize CARD = new LabelSize(85.6f, 53.98f);

    static LabelSize of(LabelKind kind) {
        return kind == LabelKind.BADGE ? CARD : STOCK;
    }

    float widthPoints() {
        return widthMillimetres * POINTS_PER_MILLIMETRE;
    }

    float heightPoints() {
        return heightMillimetres * POINTS_PER_MILLIMETRE;
    }
}
