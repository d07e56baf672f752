package brightseam.traveller;

import brightseam.kernel.BinId;
import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import java.time.Duration;
import java.util.List;

/**
 * What only a load can break. Where a load cannot go together, {@code takeOut} names the fewest travellers found whose
 * leaving lets the rest go on.
 */
public sealed interface LoadRefusal extends Refusal {

    /** {@code traveller} lies in the basket and stands elsewhere; it would go along in silence. */
    record LeftInBasket(BinId basket, TravellerId traveller, int number, String title, StepId step)
            implements LoadRefusal {
        @Override public String code() { return "left-in-basket"; }
    }

    /** The longest of the minima is not below the shortest of the maxima. */
    record HoldsDoNotMeet(StepId step, TravellerId longer, Duration minimum, TravellerId shorter, Duration maximum,
            List<TravellerId> takeOut) implements LoadRefusal {
        @Override public String code() { return "load-holds-do-not-meet"; }
    }

    /** No value of {@code reading} is in order for every one. */
    record ReadingsDoNotMeet(StepId step, String reading, List<TravellerId> takeOut) implements LoadRefusal {
        @Override public String code() { return "load-readings-do-not-meet"; }
    }

    /** Their procedures ask for different gloves, and hands wear one pair. */
    record GlovesDiffer(StepId step, List<String> gloves, List<TravellerId> takeOut) implements LoadRefusal {
        @Override public String code() { return "load-gloves-differ"; }
    }

    /** No class of bin suits every one. */
    record BinsDiffer(StepId step, List<TravellerId> takeOut) implements LoadRefusal {
        @Override public String code() { return "load-bins-differ"; }
    }

    /** The step is done with one grade in the basket. */
    record GradesMixed(StepId step, List<String> grades, List<TravellerId> takeOut) implements LoadRefusal {
        @Override public String code() { return "load-grades-mixed"; }
    }

    /** Their procedures mean different things by {@code step}. */
    record StepsDiffer(StepId step, List<TravellerId> takeOut) implements LoadRefusal {
        @Override public String code() { return "load-steps-differ"; }
    }

    /** Behind {@code step} they go to different steps before anybody could part them. */
    record WaysPart(StepId step, Duration within, List<TravellerId> takeOut) implements LoadRefusal {
        @Override public String code() { return "load-ways-part"; }
    }

    /** What lies in the basket is being held: nothing joins it now. */
    record BasketHolds(BinId basket, TravellerId inside, StepId step) implements LoadRefusal {
        @Override public String code() { return "basket-holds"; }
    }

    /** What lies in the basket stands at another step than what is to join it. */
    record BasketAtAnotherStep(BinId basket, TravellerId inside, int number, String title, TravellerId traveller,
            int ownNumber, String ownTitle) implements LoadRefusal {
        @Override public String code() { return "basket-at-another-step"; }
    }
}
