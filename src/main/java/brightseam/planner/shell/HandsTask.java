package brightseam.planner.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import java.util.Map;

/**
 * Something that one person does from one place to another.
 *
 * @param start when it begins
 * @param end when it ends
 * @param from where it may begin, each place with the literal that it does
 * @param to where it may end
 * @param by who may do it, each with the literal that they do
 */
record HandsTask(
        IntVar start, IntVar end, Map<StationId, Literal> from, Map<StationId, Literal> to,
        Map<BadgeId, Literal> by) {}
