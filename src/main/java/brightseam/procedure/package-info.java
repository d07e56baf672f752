/**
 * Invariant: a procedure that exists as an object passed every rule of sense that stood when it was approved; nothing
 * in here reads a file.
 *
 * <p>The steps, holds, gaps, limits and texts that a traveller follows, one revision at a time.
 */
package brightseam.procedure;
