package brightseam.scan;

import java.util.Optional;

/**
 * What one of our own labels is stuck on.
 *
 * <p>Every kind has a letter that its identities begin with and a data identifier of ANSI MH10.8.2 whose general
 * meaning fits. The meanings of 1B, T, 1H, 1L and Y were compared with two open tables of the standard; that of W is
 * from memory.
 */
public enum LabelKind {
    /** 1B: returnable container identification assigned by its owner (tub, basket). */
    BIN('B', "1B"),
    /** W: work order number (from memory). */
    TRAVELLER('T', "W"),
    /** T: traceability number of a lot, batch or heat, assigned by the customer, which is this shop. */
    HEAT('H', "T"),
    /** 1H: employee identification assigned by the employer. */
    BADGE('P', "1H"),
    /** 1L: location. */
    STATION('S', "1L"),
    /** Y: internal applications; never on anything that leaves the shop, and a kit's card does not. */
    KIT('K', "Y"),
    /** Y again: gloves, cloths, solvents, tools and gauges in use in the shop; their letter tells them from a kit. */
    SUPPLY('G', "Y");

    private final char letter;
    private final String dataIdentifier;

    LabelKind(char letter, String dataIdentifier) {
        this.letter = letter;
        this.dataIdentifier = dataIdentifier;
    }

    /** The letter that identities of this kind begin with, before a hyphen. */
    public char letter() {
        return letter;
    }

    /** The data identifier of ANSI MH10.8.2 in the symbol. */
    public String dataIdentifier() {
        return dataIdentifier;
    }

    /** Whether {@code id} begins as identities of this kind do. */
    public boolean owns(String id) {
        return id.length() > 2 && id.charAt(0) == letter && id.charAt(1) == '-';
    }

    /** The kind that {@code letter} belongs to. */
    static Optional<LabelKind> ofLetter(char letter) {
        for (LabelKind kind : values()) {
            if (kind.letter == letter) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
