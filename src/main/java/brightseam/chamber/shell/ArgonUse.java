package brightseam.chamber.shell;

import brightseam.chamber.ConsumptionReport;
import java.time.Instant;

/**
 * What one session used.
 *
 * @param countedAt when it was counted
 * @param report forecast and count
 */
public record ArgonUse(Instant countedAt, ConsumptionReport report) {}
