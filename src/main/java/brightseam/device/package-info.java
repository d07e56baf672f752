/**
 * Invariant: a reading is never changed once taken; what is doubtful about it is said beside it.
 *
 * <p>Meters, what their readings are worth, series of readings on the elapsed time line and what a stretch of a series
 * proves. Physical values are doubles; limits that people enter are decimals.
 */
package brightseam.device;
