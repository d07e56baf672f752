package brightseam.ui.bench;

import brightseam.ui.parts.Action;
import brightseam.ui.parts.Verdict;
import java.util.function.Supplier;

/**
 * What a face needs: what is open, what can be done, and somebody who carries a touch out.
 *
 * @param touched carries touches out
 */
record Bench(BenchModel model, Deeds deeds, Touched touched) {

    /** Carries a touch out and shows what holds then. */
    interface Touched {

        /** Does {@code deed}, says its verdict, shows the card anew. */
        void does(Supplier<Verdict> deed);

        /** Shows the card anew after {@code change}, with nothing to be said. */
        void shows(Runnable change);
    }

    /** The card's one action, which carries {@code deed} out. */
    Action main(String words, Supplier<Verdict> deed) {
        return Action.main(words, pressed -> touched.does(deed));
    }

    /** The card's one action, which only changes what is shown. */
    Action mainWay(String words, Runnable change) {
        return Action.main(words, pressed -> touched.shows(change));
    }

    /** Another action, which only changes what is shown. */
    Action way(String words, Runnable change) {
        return Action.other(words, pressed -> touched.shows(change));
    }
}
