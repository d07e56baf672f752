package brightseam.chamber;

import brightseam.kernel.Syntax;
import java.math.BigDecimal;
import java.util.List;

/**
 * What the certificate says of the gas.
 *
 * @param oxygenPpm at most that much oxygen, parts per million by volume
 * @param moisturePpm at most that much water
 * @param certificate its number, at most 40 characters
 */
public record ArgonPurity(BigDecimal oxygenPpm, BigDecimal moisturePpm, String certificate) {

    /** Gas without a trace, for where none is connected. */
    public static final ArgonPurity PERFECT = new ArgonPurity(BigDecimal.ZERO, BigDecimal.ZERO, "none");

    /** Refuses shares below zero or above the whole, and an empty certificate. */
    public ArgonPurity {
        Amounts.between("oxygen", oxygenPpm, "0", "1000000");
        Amounts.between("moisture", moisturePpm, "0", "1000000");
        certificate = Syntax.text("certificate", certificate, 40);
    }

    /** The most oxygen and the most moisture of {@code several}; {@link #PERFECT} where there are none. */
    public static ArgonPurity worst(List<ArgonPurity> several) {
        return several.stream().reduce((one, other) -> new ArgonPurity(one.oxygenPpm().max(other.oxygenPpm()),
                one.moisturePpm().max(other.moisturePpm()), one.certificate())).orElse(PERFECT);
    }
}
