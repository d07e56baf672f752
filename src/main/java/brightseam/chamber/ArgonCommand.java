package brightseam.chamber;

import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.kernel.Syntax;
import brightseam.people.Signer;
import java.util.Optional;

/** What can be asked of one source of argon. */
public sealed interface ArgonCommand {

    /** Which source. */
    SupplyId supply();

    /** When, by whom and where. */
    Origin origin();

    /** Brings a source into the shop, with its first reading where one was taken. */
    record Deliver(SupplyId supply, ArgonVessel vessel, ArgonPurity purity, Optional<ArgonReading> reading,
            Origin origin) implements ArgonCommand {}

    /** Enters what was read off it; {@code corrects} says that the reading before was wrong. */
    record EnterReading(SupplyId supply, ArgonReading reading, boolean corrects, Origin origin)
            implements ArgonCommand {}

    /** Connects it to {@code chamber}, as that stands; part of a change-over. */
    record Connect(SupplyId supply, Chamber chamber, Origin origin, Signer signer) implements ArgonCommand {}

    /** Takes it off {@code chamber}; part of a change-over. */
    record Disconnect(SupplyId supply, Chamber chamber, Origin origin, Signer signer) implements ArgonCommand {}

    /** Says that nothing that can be used is left of it. */
    record DeclareEmpty(SupplyId supply, Origin origin) implements ArgonCommand {}

    /** Takes it out of the shop for good. */
    record Retire(SupplyId supply, String reason, Origin origin) implements ArgonCommand {
        /** Strips the reason; refuses an empty or overlong one. */
        public Retire {
            reason = Syntax.text("reason", reason, 200);
        }
    }
}
