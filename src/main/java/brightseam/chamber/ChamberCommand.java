package brightseam.chamber;

import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.Syntax;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.util.Optional;

/** What can be asked of one chamber. Reasons are stripped and have at most 200 characters. */
public sealed interface ChamberCommand {

    /** Which chamber. */
    StationId station();

    /** When, by whom and where. */
    Origin origin();

    /** Begins the record of a chamber. */
    record RegisterChamber(StationId station, ChamberTerms terms, Origin origin, Signer signer)
            implements ChamberCommand {}

    /** Puts other volumes, flows, limits or materials in the place of those that held. */
    record ChangeTerms(StationId station, ChamberTerms terms, String reason, Origin origin, Signer signer)
            implements ChamberCommand {
        /** Checks the reason. */
        public ChangeTerms {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /** Enters a leak test, or what the fit of a purge gave: see {@link LeakTest} for the parts. */
    record RecordLeak(StationId station, BigDecimal airLitresPerMinute, Optional<BigDecimal> mixingEfficiency,
            String how, Origin origin, Signer signer) implements ChamberCommand {
        /** Refuses a leak below zero and an efficiency outside 0.05 to 5; checks the text. */
        public RecordLeak {
            Amounts.notNegative("leak", airLitresPerMinute);
            mixingEfficiency.ifPresent(share -> Amounts.between("mixing efficiency", share, "0.05", "5"));
            how = Syntax.text("how it was found", how, 200);
        }
    }

    /** Takes one source of argon off and puts another on; either may be missing. */
    record ChangeOver(
            StationId station, Optional<SupplyId> off, Optional<SupplyId> on, Origin origin, Signer signer)
            implements ChamberCommand {}

    /** Writes down what a session used, against what was forecast for it. */
    record NoteArgonUsed(StationId station, ConsumptionReport report, Origin origin) implements ChamberCommand {}
}
