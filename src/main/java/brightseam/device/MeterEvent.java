package brightseam.device;

import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.people.Signer;
import java.math.BigDecimal;

/** What happened to one meter. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface MeterEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which meter. */
    SupplyId meter();

    /** It was installed. */
    record Registered(Origin origin, SupplyId meter, MeterTerms terms, Signer signer) implements MeterEvent {}

    /** It is installed otherwise from now on. */
    record TermsChanged(Origin origin, SupplyId meter, MeterTerms terms, String reason, Signer signer)
            implements MeterEvent {}

    /** A new token for its device was made; an older one counts no more. The token itself is nowhere in the record. */
    record TokenMade(Origin origin, SupplyId meter, Signer signer) implements MeterEvent {}

    /** Somebody read it and typed what it said. */
    record ReadingTyped(Origin origin, SupplyId meter, BigDecimal value) implements MeterEvent {}

    /** It is not used any more. */
    record TakenOutOfUse(Origin origin, SupplyId meter, String reason, Signer signer) implements MeterEvent {}

    /** It is used again. */
    record PutBackIntoUse(Origin origin, SupplyId meter, Signer signer) implements MeterEvent {}
}
