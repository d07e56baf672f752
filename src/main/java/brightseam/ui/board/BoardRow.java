package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * One traveller as the board says it.
 *
 * @param id its label
 * @param kit its kit
 * @param part what the pieces are and how many
 * @param step the step it is at, and where
 * @param bin the bin it is in
 * @param now what is to be done with it now
 * @param verdict {@code Ready to pass in}, {@code Quarantine}, {@code Not ready} or {@code Passed in}
 * @param missing what is missing of ready, shortly
 * @param countdowns what runs out, the nearest first
 * @param stopped whether it is in quarantine
 */
record BoardRow(
        TravellerId id,
        KitId kit,
        String part,
        String step,
        String bin,
        String now,
        String verdict,
        List<String> missing,
        List<Countdown> countdowns,
        boolean stopped) {

    /** What runs out within this time hurries; the shop's own choice. */
    static final Duration HURRY = Duration.ofHours(1);

    /** What runs out first. */
    Optional<Countdown> first() {
        return countdowns.stream().findFirst();
    }

    /** Whether something runs out within {@link #HURRY}, or has run out, or stops the traveller. */
    boolean hurries() {
        return stopped || first().filter(soon -> soon.left().compareTo(HURRY) <= 0).isPresent();
    }
}
