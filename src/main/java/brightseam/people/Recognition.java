package brightseam.people;

import brightseam.kernel.Refusal;
import java.util.List;

/** What became of a badge and a PIN. */
public sealed interface Recognition {

    /** The PIN is right and the badge is open. */
    record Recognised(Signer signer) implements Recognition {}

    /** Not recognised; at least one refusal. A wrong badge and a wrong PIN look the same. */
    record NotRecognised(List<Refusal> refusals) implements Recognition {
        /** Copies the list. */
        public NotRecognised {
            refusals = List.copyOf(refusals);
        }

        /** For one reason. */
        public NotRecognised(Refusal refusal) {
            this(List.of(refusal));
        }
    }
}
