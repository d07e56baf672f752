package brightseam.ui.chamber;

import brightseam.kernel.TravellerId;
import brightseam.weld.ArcPurpose;
import brightseam.weld.shell.ArcRequest;
import java.util.Optional;

/**
 * What a welder has said on this tablet for the next arc on a joint. It is kept by the page alone and falls away with
 * it; what counts is asked anew when the arc begins.
 *
 * @param purpose what the arc is for
 * @param filler the filler, once it is scanned
 * @param backSide whether the back side was looked at
 * @param armed whether the welder has signed for this joint
 * @param again whether another arc is wanted on a joint that has one
 */
record ReadyFor(ArcPurpose purpose, Optional<TravellerId> filler, boolean backSide, boolean armed, boolean again) {

    static final ReadyFor NOTHING = new ReadyFor(ArcPurpose.WELD, Optional.empty(), false, false, false);

    ReadyFor purpose(ArcPurpose next) {
        return new ReadyFor(next, filler, backSide, armed, true);
    }

    ReadyFor filler(TravellerId scanned) {
        return new ReadyFor(purpose, Optional.of(scanned), backSide, armed, again);
    }

    ReadyFor backSideSeen() {
        return new ReadyFor(purpose, filler, true, armed, again);
    }

    ReadyFor arm() {
        return new ReadyFor(purpose, filler, backSide, true, again);
    }

    /** After an arc: the welder stays armed, the back side is looked at again. */
    ReadyFor afterArc() {
        return new ReadyFor(purpose, filler, false, armed, false);
    }

    ArcRequest request() {
        return new ArcRequest(purpose, filler, backSide);
    }
}
