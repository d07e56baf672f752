/**
 * Invariant: pure and the same for the same seed; nothing here reads a clock, and nothing is shared with the arithmetic
 * by which the shop judges its chamber, so that the two can be held against each other.
 *
 * <p>How an invented chamber, its lock, its gauges and its argon behave: well-mixed volumes, leaks, damp walls, gauges
 * that lag and are noisy, cylinders that empty. Simulated, and marked so wherever it is shown.
 */
package brightseam.demo.physics;
