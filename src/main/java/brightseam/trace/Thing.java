package brightseam.trace;

import brightseam.kernel.Syntax;
import brightseam.traveller.Contact;

/**
 * One thing that touched pieces.
 *
 * @param kind what sort
 * @param label its own label; for the fill of a bath, the tank's
 * @param lot the maker's lot or serial number, for a bath the name of its fill; a hyphen where there is none
 */
public record Thing(ThingKind kind, String label, String lot) {

    /** What stands for a lot where there is none. */
    public static final String NO_LOT = "-";

    /** Refuses missing or over-long texts. */
    public Thing {
        label = Syntax.text("label", label, 24);
        lot = Syntax.text("lot", lot, 40);
    }

    /** A thing without a lot. */
    public static Thing of(ThingKind kind, Object label) {
        return new Thing(kind, label.toString(), NO_LOT);
    }

    /** What {@code contact} names. */
    public static Thing of(Contact contact) {
        return new Thing(ThingKind.of(contact.kind()), contact.label(), contact.lot());
    }
}
