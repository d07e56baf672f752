package brightseam.session;

import brightseam.kernel.Syntax;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;

/**
 * One thing that goes into the chamber.
 *
 * @param kind what sort of thing
 * @param label its own label
 * @param type for travellers the name of their procedure, for supplies the key of their type
 * @param title what people call it
 * @param pieces how many pieces it is; 1 for a supply
 */
public record Item(Kind kind, String label, String type, String title, int pieces) {

    /** What sort of thing goes in. */
    public enum Kind {
        /** Parts, by their traveller. */
        PARTS,
        /** Filler, by its traveller. */
        FILLER,
        /** A fixture, a tool, gloves: by the label of the register of supplies. */
        SUPPLY
    }

    /** Refuses missing or overlong texts and less than one piece. */
    public Item {
        label = Syntax.identity("label", label);
        type = Syntax.text("type", type, 40);
        title = Syntax.text("title", title, 80);
        if (pieces < 1) {
            throw new IllegalArgumentException("pieces below 1");
        }
    }

    /** Whether a traveller goes with it. */
    public boolean hasTraveller() {
        return kind != Kind.SUPPLY;
    }

    /** Its traveller's label. */
    public TravellerId traveller() {
        return new TravellerId(label);
    }

    /** Its label in the register of supplies. */
    public SupplyId supply() {
        return new SupplyId(label);
    }
}
