/**
 * Invariant: a traveller is written only through {@link brightseam.traveller.shell.TravellerActions}, which reads the
 * clock, gathers facts, asks the decider and appends; what it refused is in the record too.
 */
package brightseam.traveller.shell;
