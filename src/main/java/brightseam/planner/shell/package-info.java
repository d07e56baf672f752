/**
 * Invariant: no plan leaves this package that the independent checker finds fault with, and none is called best
 * without a proof.
 *
 * <p>The solver behind the plan of the line: the rules as a constraint model for CP-SAT.
 */
package brightseam.planner.shell;
