package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.procedure.BinClass;
import brightseam.procedure.Hold;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Vocabulary.Caution;
import java.util.List;
import java.util.Optional;

/** What the card asks for, ready to be drawn; one for each {@link brightseam.traveller.NextAction}. */
sealed interface Doing {

    /** Scan a bin of one of {@code classes}; {@code ask} says so. */
    record PutInto(String ask, List<BinClass> classes) implements Doing {}

    /** Close the bin or seal the bag; {@code done} is what the action says. */
    record Close(String ask, BinId bin, String done) implements Doing {}

    /**
     * Begin the step by scanning what touches the pieces, then its station.
     *
     * @param cautions shown until they are confirmed
     * @param confirm what the confirmation says; empty where there is nothing to confirm, or it is confirmed
     * @param scans what touches the pieces
     * @param needs what else has to be at hand
     */
    record Start(String ask, List<Caution> cautions, Optional<String> confirm, List<Scan> scans, List<String> needs)
            implements Doing {}

    /**
     * Something to be scanned.
     *
     * @param name what it is
     * @param ticked label and lot, once it is scanned
     */
    record Scan(String name, Optional<String> ticked) {}

    /**
     * Enter a reading.
     *
     * @param unit its symbol
     * @param limits in words
     * @param again where the last one was not in order, what it was
     */
    record Reading(ReadingSpec spec, String unit, String limits, Optional<String> again) implements Doing {}

    /** Begin the hold. */
    record BeginHold(String ask, String done) implements Doing {}

    /**
     * A hold runs.
     *
     * @param done what the action says that ends it
     */
    record Holding(String label, Hold hold, Moment begun, Moment earliest, String atMinimum, String atMaximum,
            String done) implements Doing {}

    /**
     * Sign.
     *
     * @param lines exactly what is signed
     * @param meaning what the signature says
     */
    record Sign(List<String> lines, String meaning) implements Doing {}

    /** Somebody else has to act: an inspector, the lead, or nobody any more. */
    record Wait(String word, List<String> lines) implements Doing {}
}
