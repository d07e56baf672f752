/**
 * Invariant: planning runs on a thread of its own and holds nobody up; what a screen is told is always a whole plan.
 */
package brightseam.lineplan.shell;
