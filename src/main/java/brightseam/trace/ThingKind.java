package brightseam.trace;

import brightseam.kernel.ContactKind;
import java.util.EnumSet;
import java.util.Set;

/** What sort of thing touches pieces, or is where they come from and belong to. */
public enum ThingKind {
    /** The heat that the pieces are of. */
    HEAT,
    /** The kit that they belong to. */
    KIT,
    /** Whoever handled them, by badge. */
    PERSON,
    /** A bin of any class. */
    BIN,
    /** A station, whatever was in it. */
    STATION,
    /** One fill of a bath, by the label of its tank and the name of the fill, such as {@code fill 3}. */
    BATH,
    /** A lot of gloves. */
    GLOVES,
    /** A lot of wiping cloths. */
    WIPES,
    /** A lot of solvent. */
    SOLVENT,
    /** A lot of cleaner. */
    CLEANER,
    /** A supply of water. */
    WATER,
    /** A lot of filler. */
    FILLER,
    /** A lot of bags. */
    BAGS,
    /** A tool. */
    TOOL,
    /** A gauge or another measuring instrument. */
    GAUGE,
    /** A cylinder, bundle or dewar of argon. */
    ARGON;

    private static final Set<ThingKind> LIFTED_OUT_OF = EnumSet.of(STATION, BATH, WATER);
    private static final Set<ThingKind> OF_STEPS = EnumSet.range(STATION, ARGON);
    private static final Set<ThingKind> CARRYING = EnumSet.of(BIN, BATH, GLOVES);

    /** The kind of what a step asks for. */
    public static ThingKind of(ContactKind kind) {
        return switch (kind) {
            case BATH -> BATH;
            case GLOVES -> GLOVES;
            case WIPES -> WIPES;
            case SOLVENT -> SOLVENT;
            case CLEANER -> CLEANER;
            case WATER -> WATER;
            case FILLER -> FILLER;
            case BAGS -> BAGS;
            case TOOL -> TOOL;
            case GAUGE -> GAUGE;
            case ARGON -> ARGON;
        };
    }

    /** Whether contact with it ends when the step's hold ends: the pieces are lifted out. */
    boolean endsWithHold() {
        return LIFTED_OUT_OF.contains(this);
    }

    /** Whether contact with it belongs to one step and ends with the step's signature at the latest. */
    boolean isOfStep() {
        return OF_STEPS.contains(this);
    }

    /** Whether it carries dirt from one lot to another that it touches in the same time. Common practice. */
    public boolean carries() {
        return CARRYING.contains(this);
    }

    /** Whether a lot of it, besides its label, tells one from another. */
    public boolean hasLots() {
        return isOfStep() && this != STATION;
    }
}
