package brightseam.ui.line;

import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import java.util.List;

/**
 * A load between two steps, while a gap runs.
 *
 * @param load its basket, else the traveller
 * @param next the step that has to begin, number and title
 * @param since when the gap began
 * @param latest when that step has to have begun
 */
record BetweenRow(String load, List<TravellerId> travellers, String next, Moment since, Moment latest) {}
