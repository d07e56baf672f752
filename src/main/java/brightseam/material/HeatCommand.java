package brightseam.material;

import brightseam.kernel.HeatId;
import brightseam.kernel.Origin;
import brightseam.kernel.Syntax;
import java.time.Instant;
import java.util.Objects;

/** What can be asked of one heat. */
public sealed interface HeatCommand {

    /** Which heat. */
    HeatId heat();

    /** When, by whom and where. */
    Origin origin();

    /** Receives a heat with its certificate; see {@link Heat} for the parts. */
    record RegisterHeat(
            HeatId heat,
            String grade,
            String form,
            String dimensions,
            String maker,
            String certificateNumber,
            Instant receivedAt,
            Origin origin)
            implements HeatCommand {
        /** Strips the texts; refuses empty or overlong ones and a form that is not one lower-case word. */
        public RegisterHeat {
            grade = Syntax.text("grade", grade, 12);
            form = Syntax.slug("form", form);
            dimensions = Syntax.text("dimensions", dimensions, 60);
            maker = Syntax.text("maker", maker, 80);
            certificateNumber = Syntax.text("certificate number", certificateNumber, 40);
            Objects.requireNonNull(receivedAt, "receivedAt");
        }
    }

    /** Stops the use of a heat, with the reason in at most 200 characters. */
    record PutOnHold(HeatId heat, String reason, Origin origin) implements HeatCommand {
        /** Strips the reason; refuses an empty or overlong one. */
        public PutOnHold {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /** Allows the use again, with the reason in at most 200 characters. */
    record ReleaseHold(HeatId heat, String reason, Origin origin) implements HeatCommand {
        /** Strips the reason; refuses an empty or overlong one. */
        public ReleaseHold {
            reason = Syntax.text("reason", reason, 200);
        }
    }
}
