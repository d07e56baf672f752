/**
 * Invariant: what touched a piece is read from its traveller's events alone, and every piece is under one traveller.
 *
 * <p>Makes contacts out of events: with heats, kits, people, bins, stations, fills of baths, supplies, tools, gauges;
 * from when until when, at which step, with which pieces. Where pieces are set apart, what touched them goes with them.
 */
package brightseam.trace;
