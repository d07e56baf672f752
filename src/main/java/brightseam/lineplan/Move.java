package brightseam.lineplan;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.procedure.Step;
import java.util.Optional;

/**
 * One thing that hands do next, by the plan.
 *
 * @param load the load's label
 * @param step the step that it goes into; empty where it comes off the line
 * @param from where it is
 * @param to where it goes
 * @param person whose hands
 * @param takenAt when it is taken up
 * @param beginsAt when the step begins, or when it is off the line
 */
public record Move(
        String load,
        Optional<Step> step,
        StationId from,
        StationId to,
        BadgeId person,
        Moment takenAt,
        Moment beginsAt) {}
