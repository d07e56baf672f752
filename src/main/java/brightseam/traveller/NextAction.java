package brightseam.traveller;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.procedure.BinClass;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import java.util.List;
import java.util.Optional;

/** The one thing to do now. */
public sealed interface NextAction {

    /** Put the pieces into a bin of one of {@code classes}, for {@code step}. */
    record PutInto(Step step, List<BinClass> classes, Optional<GapClock> gap) implements NextAction {}

    /** Close the bin or seal the bag. */
    record CloseBin(Step step, BinId bin, BinClass binClass) implements NextAction {}

    /** Begin {@code step}; hurried where a gap runs. */
    record Begin(Step step, Optional<GapClock> gap) implements NextAction {}

    /** Read {@code reading} and write it down; {@code again} where the last one was not in order. */
    record Read(Step step, ReadingSpec reading, boolean again, Optional<GapClock> gap) implements NextAction {}

    /** Begin the hold. */
    record BeginHold(Step step, Optional<GapClock> gap) implements NextAction {}

    /** Wait until {@code earliest}, then end the hold before {@code latest}. */
    record Holding(Step step, Moment begun, Moment earliest, Optional<Moment> latest) implements NextAction {}

    /** Sign. */
    record Sign(Step step) implements NextAction {}

    /** An inspector's stamp is due. */
    record AwaitStamp(Step step) implements NextAction {}

    /** {@code step} is done in a chamber session, which is begun, carried on and signed there. */
    record AwaitSession(Step step) implements NextAction {}

    /** Open nonconformances wait for a disposition. */
    record AwaitDisposition(List<Nonconformance> open) implements NextAction {}

    /** Nothing is left to do. */
    record Ended(Phase phase) implements NextAction {}

    /** The step that it is about, where it is about one. */
    default Optional<Step> about() {
        return switch (this) {
            case PutInto at -> Optional.of(at.step());
            case CloseBin at -> Optional.of(at.step());
            case Begin at -> Optional.of(at.step());
            case Read at -> Optional.of(at.step());
            case BeginHold at -> Optional.of(at.step());
            case Holding at -> Optional.of(at.step());
            case Sign at -> Optional.of(at.step());
            case AwaitStamp at -> Optional.of(at.step());
            case AwaitSession at -> Optional.of(at.step());
            case AwaitDisposition open -> Optional.empty();
            case Ended ended -> Optional.empty();
        };
    }
}
