package brightseam.traveller;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Syntax;

/**
 * Something that touched the pieces, with what finds it again years later.
 *
 * @param kind what sort of thing
 * @param type which of that sort, such as {@code white-cotton} or {@code acetone}
 * @param label its own label: a supply's, or for a bath the tank's
 * @param lot the maker's lot, a serial number, or for a bath the number of its fill; a hyphen where there is none
 */
public record Contact(ContactKind kind, String type, String label, String lot) {

    /** Refuses missing or over-long texts. */
    public Contact {
        type = Syntax.text("type", type, 40);
        label = Syntax.text("label", label, 24);
        lot = Syntax.text("lot", lot, 40);
    }
}
