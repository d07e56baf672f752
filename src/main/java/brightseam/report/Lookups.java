package brightseam.report;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.procedure.Vocabulary;
import brightseam.words.Wording;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * What the record names and does not hold itself.
 *
 * @param names printed names by badge, as registered now; signatures carry their own
 * @param heat the metal, where its label is registered
 * @param approval of the revision that the traveller follows
 * @param vocabulary units, cautions and gloves in words
 * @param wording sentences for refusals
 * @param lastDays last days of supplies and of gauges' calibrations by label, as registered now
 * @param readings where meters' readings are
 */
public record Lookups(Map<BadgeId, String> names, Optional<HeatDetails> heat, Optional<Approval> approval,
        Vocabulary vocabulary, Wording wording, Map<String, LocalDate> lastDays, OxygenReadings readings) {

    /** Copies the maps. */
    public Lookups {
        names = Map.copyOf(names);
        lastDays = Map.copyOf(lastDays);
    }

    Optional<LocalDate> lastDay(String label) {
        return Optional.ofNullable(lastDays.get(label));
    }

    /** The person with {@code badge}; the badge itself where it is not registered. */
    public Who who(BadgeId badge) {
        return new Who(badge, badge.equals(Origin.SHOP) ? "the shop's server"
                : names.getOrDefault(badge, badge.value()));
    }

    String caution(String key) {
        return Optional.ofNullable(vocabulary.cautions().get(key)).map(Vocabulary.Caution::title).orElse(key);
    }

    String gloves(String key) {
        return Optional.ofNullable(vocabulary.gloves().get(key)).map(Vocabulary.Glove::name).orElse(key);
    }
}
