package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import java.math.BigDecimal;

/** What the bench refuses, or writes down, before it becomes a command. */
sealed interface BenchRefusal extends Refusal {

    /** Nothing lies in the bin that was scanned to be opened. */
    record NothingInside(BinId bin) implements BenchRefusal {
        @Override public String code() { return "nothing-inside"; }
    }

    /** A station was scanned while the card asks for something else. */
    record StationNotAsked(StationId station, StepId step) implements BenchRefusal {
        @Override public String code() { return "station-not-asked"; }
    }

    /** A value out of limits was keyed and taken back before it counted; kept so that no retry is silent. */
    record ReadingTakenBack(StepId step, String reading, BigDecimal value) implements BenchRefusal {
        @Override public String code() { return "reading-taken-back"; }
    }

    /** What the key pad sent is no number. */
    record NoNumber(String text) implements BenchRefusal {
        @Override public String code() { return "no-number"; }
    }

    /** No card is open on this tablet any more. */
    record NoCardOpen() implements BenchRefusal {
        @Override public String code() { return "no-card-open"; }
    }
}
