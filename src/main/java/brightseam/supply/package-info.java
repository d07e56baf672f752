/**
 * Invariant: nothing that is unknown, used up, out of date, out of calibration or contaminated is fit for a step, and
 * every reason against it is told, not the first alone.
 *
 * <p>What touches titanium by lots and by single pieces: gloves, cloths, solvents, tools, gauges. What a step asks for
 * is the procedure's to say; that it was scanned is the traveller's record.
 */
package brightseam.supply;
