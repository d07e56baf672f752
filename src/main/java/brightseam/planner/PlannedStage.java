package brightseam.planner;

import brightseam.kernel.StationId;
import brightseam.kernel.StepId;

/**
 * One stage in a plan.
 *
 * @param basket the basket's label
 * @param number which of the basket's stages, from 0
 * @param step its step
 * @param station where
 * @param startSeconds when the hold begins
 * @param endSeconds when the lift out begins
 */
public record PlannedStage(
        String basket, int number, StepId step, StationId station, int startSeconds, int endSeconds) {}
