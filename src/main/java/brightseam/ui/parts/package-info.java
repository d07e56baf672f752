/**
 * Invariant: a part shows what it is handed and raises what was done to it; it reads no service, no clock and no rule.
 *
 * <p>The pieces that every screen is made of: frame, work card, verdict, clocks, key pad, scanning, charts, words.
 */
package brightseam.ui.parts;
