/**
 * Invariant: a plan is never trusted because a solver made it; {@link brightseam.planner.PlanChecker} reads the rules
 * and the plan alone, and shares nothing with what makes plans.
 *
 * <p>The plan of the cleaning line: which basket goes into which tank when, and whose hands move it. Times are whole
 * seconds from the moment the problem was stated; what happened before lies below zero.
 */
package brightseam.planner;
