package brightseam.report;

import java.time.Instant;
import java.util.Optional;

/**
 * The metal, as registered.
 *
 * @param label its label in the shop
 * @param grade titanium grade
 * @param form such as {@code tube}
 * @param dimensions as ordered, with units
 * @param maker whose certificate it is
 * @param certificateNumber the maker's number of it
 * @param receivedAt when it came into the shop
 * @param holdReason why nothing may be made of it now; empty where it is not on hold
 */
public record HeatDetails(
        String label,
        String grade,
        String form,
        String dimensions,
        String maker,
        String certificateNumber,
        Instant receivedAt,
        Optional<String> holdReason) {}
