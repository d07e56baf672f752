/**
 * Invariant: one server per data folder, one clock, and no database that appears from nowhere.
 *
 * <p>Starts the server and wires what belongs to no feature: data folder, database, clock.
 */
package brightseam.app;
