package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.traveller.TravellerEvent.HoldEnded;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import java.util.Optional;

/**
 * Of a record that is read by {@link RecordCheck}: pieces that leave a lot in its bath leave the bath with it; nothing
 * comes between, and no time passes.
 */
final class ComingOutCheck {

    private Optional<Moment> due = Optional.empty();

    /** The pieces left a lot that is in its bath at {@code at}. */
    void leave(Moment at) {
        due = Optional.of(at);
    }

    /** Whether the pieces never came out. */
    boolean isStillIn() {
        return due.isPresent();
    }

    /** Whether {@code event} leaves them behind. */
    boolean leavesBehind(TravellerEvent event) {
        if (due.isEmpty()) {
            return false;
        }
        boolean cut = event instanceof NonconformanceOpened opened
                && opened.cause() == Nonconformance.Cause.HOLD_CUT_SHORT;
        boolean out = (cut || event instanceof HoldEnded) && event.at().equals(due.get());
        due = cut ? due : Optional.empty();
        return !out;
    }
}
