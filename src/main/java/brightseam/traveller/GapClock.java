package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.kernel.StepId;

/**
 * A gap that is running: {@code to} has to begin before {@code latest}.
 *
 * @param from the step that ended
 * @param to the step that has to begin
 * @param since when the first one ended
 * @param latest the last moment to begin
 * @param reason why it matters
 */
public record GapClock(StepId from, StepId to, Moment since, Moment latest, String reason) {}
