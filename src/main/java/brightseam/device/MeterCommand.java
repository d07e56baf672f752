package brightseam.device;

import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.kernel.Syntax;
import brightseam.people.Signer;
import java.math.BigDecimal;

/** What can be asked of one meter. Reasons are stripped and have at most 200 characters. */
public sealed interface MeterCommand {

    /** Which meter. */
    SupplyId meter();

    /** When, by whom and where. */
    Origin origin();

    /** Installs a gauge of the supply register as a meter. */
    record RegisterMeter(SupplyId meter, MeterTerms terms, Origin origin, Signer signer) implements MeterCommand {}

    /** Says that it is installed otherwise from now on. */
    record ChangeTerms(SupplyId meter, MeterTerms terms, String reason, Origin origin, Signer signer)
            implements MeterCommand {
        /** Checks the reason. */
        public ChangeTerms {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /** Makes a new token for the device behind it. */
    record MakeToken(SupplyId meter, Origin origin, Signer signer) implements MeterCommand {}

    /** Types what it says. */
    record TypeReading(SupplyId meter, BigDecimal value, Origin origin) implements MeterCommand {}

    /** Takes it out of use. */
    record TakeOutOfUse(SupplyId meter, String reason, Origin origin, Signer signer) implements MeterCommand {
        /** Checks the reason. */
        public TakeOutOfUse {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /** Uses it again. */
    record PutBackIntoUse(SupplyId meter, Origin origin, Signer signer) implements MeterCommand {}
}
