/** Invariant: the plan is told as it was made and checked; these pages compute no times of their own. */
package brightseam.ui.plan;
