package brightseam.traveller.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.traveller.Guide;
import brightseam.traveller.Missing;
import brightseam.traveller.NextAction;
import brightseam.traveller.Readiness;
import brightseam.traveller.SignedContent;
import brightseam.traveller.Traveller;
import java.util.List;
import java.util.Optional;

/**
 * A traveller with the procedure that it follows, as screens show it.
 *
 * @param traveller its state
 * @param procedure the revision that it was released with
 * @param version the version of its stream that the state was folded from
 */
public record Card(Traveller traveller, Procedure procedure, long version) {

    /** Its label. */
    public TravellerId id() {
        return traveller.id();
    }

    /** The one thing to do now. */
    public NextAction next() {
        return Guide.next(traveller, procedure);
    }

    /** What is missing before it can be passed in. */
    public List<Missing> missing(Moment now) {
        return Readiness.missing(traveller, procedure, now);
    }

    /** Whether nothing is missing. */
    public boolean isReady(Moment now) {
        return Readiness.isReady(traveller, procedure, now);
    }

    /** The first step that is not signed. */
    public Optional<Step> currentStep() {
        return traveller.currentStep().map(procedure::step);
    }

    /** The SHA-256 of what is signed where it is signed as it stands. */
    public String content() {
        return SignedContent.sha256(traveller, procedure);
    }
}
