package brightseam.supply;

import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.kernel.Syntax;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary.SupplyType;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/** What can be asked of one supply. Reasons have at most 200 characters. */
public sealed interface SupplyCommand {

    /** Which supply. */
    SupplyId supply();

    /** When, by whom and where. */
    Origin origin();

    /**
     * Brings a supply into the shop.
     *
     * @param type what the shared table says of its type
     * @param lastDay its expiry date, or for a gauge the last day of its calibration
     * @param mayTouch what it is kept for, at most what its type may touch
     */
    record RegisterSupply(SupplyId supply, SupplyType type, String title, String lot, String maker,
            Optional<LocalDate> lastDay, Set<Surface> mayTouch, Origin origin) implements SupplyCommand {
        /** Strips the texts; refuses empty and overlong ones. */
        public RegisterSupply {
            title = Syntax.text("title", title, 60);
            lot = Syntax.text("lot or serial number", lot, 40);
            maker = Syntax.text("maker", maker, 60);
            mayTouch = Set.copyOf(mayTouch);
        }
    }

    /** Opens the pack or the bottle. */
    record OpenSupply(SupplyId supply, Origin origin) implements SupplyCommand {}

    /** Says that it touched steel or something else that must not come onto titanium. */
    record ReportContaminated(SupplyId supply, String what, Origin origin) implements SupplyCommand {
        /** Strips the text; refuses an empty or overlong one. */
        public ReportContaminated {
            what = Syntax.text("what it touched", what, 200);
        }
    }

    /** Says that a contaminated tool or gauge was cleaned, or its working part replaced, and how. */
    record DeclareClean(SupplyId supply, String how, Origin origin) implements SupplyCommand {
        /** Strips the text; refuses an empty or overlong one. */
        public DeclareClean {
            how = Syntax.text("how it was cleaned or what was replaced", how, 200);
        }
    }

    /** Says that a gauge was calibrated and until which day that holds. */
    record Calibrate(SupplyId supply, LocalDate until, String certificate, Origin origin) implements SupplyCommand {
        /** Strips the text; refuses an empty or overlong one. */
        public Calibrate {
            certificate = Syntax.text("calibration certificate", certificate, 40);
        }
    }

    /** Says that nothing is left of it. */
    record UseUp(SupplyId supply, Origin origin) implements SupplyCommand {}

    /** Takes it out of the shop for good. */
    record RetireSupply(SupplyId supply, String reason, Origin origin) implements SupplyCommand {
        /** Strips the text; refuses an empty or overlong one. */
        public RetireSupply {
            reason = Syntax.text("reason", reason, 200);
        }
    }
}
