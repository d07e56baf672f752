/**
 * Invariant: nothing is ever deleted here; what is no longer used is withdrawn, retired, put on hold or deactivated,
 * and stays in its list.
 *
 * <p>The shop's registers: people, bins, stations, heats, procedures, labels.
 */
package brightseam.ui.admin;
