package brightseam.ui.baths;

import brightseam.line.Addend;
import brightseam.line.BathDeed;
import brightseam.line.BathLock;
import brightseam.line.BathQuantity;
import brightseam.line.Liquid;
import brightseam.words.Words;
import java.math.BigDecimal;

/** What people call the parts of a bath. */
final class BathWords {

    private BathWords() {}

    static String quantity(BathQuantity quantity) {
        return switch (quantity) {
            case NITRIC_ACID -> "Nitric acid";
            case HYDROFLUORIC_ACID -> "Hydrofluoric acid";
            case ACID_RATIO -> "Nitric to hydrofluoric acid";
            case TEMPERATURE -> "Temperature";
            case DISSOLVED_TITANIUM -> "Dissolved titanium";
            case CONDUCTIVITY -> "Conductivity";
            case CHLORIDE -> "Chloride";
            case PH -> "pH";
            case CLEANER_STRENGTH -> "Cleaner strength";
        };
    }

    /** The label of a field for it, with its unit. */
    static String field(BathQuantity quantity) {
        return quantity == BathQuantity.ACID_RATIO ? "Parts of nitric to one of hydrofluoric acid"
                : quantity(quantity) + (quantity.unit().isEmpty() ? "" : ", " + quantity.unit());
    }

    static String value(BathQuantity quantity, BigDecimal value) {
        return Words.quantity(value, quantity.unit());
    }

    static String liquid(Liquid liquid) {
        return switch (liquid) {
            case ALKALINE_CLEANER -> "alkaline cleaner";
            case PICKLING_ACID -> "nitric and hydrofluoric acid";
            case RINSE_WATER -> "rinse water";
            case DEIONISED_WATER -> "deionised water";
            case AIR -> "warm air";
        };
    }

    static String addend(Addend addend) {
        return switch (addend) {
            case NITRIC_ACID -> "nitric acid, 70 % concentrate";
            case HYDROFLUORIC_ACID -> "hydrofluoric acid, 60 % concentrate";
            case CLEANER_CONCENTRATE -> "cleaner concentrate";
            case WATER -> "water";
            case DEIONISED_WATER -> "deionised water";
        };
    }

    static String cause(BathLock.Cause cause) {
        return switch (cause) {
            case BY_HAND -> "locked by hand";
            case OUT_OF_LIMITS -> "out of limits";
            case FOUND_BAD -> "found bad";
        };
    }

    static String deed(BathDeed deed) {
        String why = deed.reason().map(reason -> ": " + reason).orElse("");
        return switch (deed.what()) {
            case REGISTERED -> "Registered";
            case TERMS_CHANGED -> "Limits changed" + why;
            case MADE_UP -> "Filled anew" + why;
            case ADDED -> "Added " + Words.quantity(deed.litres().orElseThrow(), "L") + " "
                    + addend(deed.addend().orElseThrow()) + why;
            case LOCKED -> "Locked, " + cause(deed.cause().orElseThrow()) + why;
            case UNLOCKED -> "Unlocked, was " + cause(deed.cause().orElseThrow()) + why;
        };
    }

    static String by(BathDeed deed) {
        return deed.by().isEmpty() ? "the analysis" : deed.by();
    }
}
