/**
 * Invariant: no purge is begun that the argon cannot finish, and nothing is let in whose material the chamber's list
 * does not name.
 *
 * <p>The welding chamber as shop data: volumes, flows, lock, limits with their sources, permitted materials; and the
 * argon: cylinders, bundles and dewars, what is left in them, who connected which one when, and how long they last.
 */
package brightseam.chamber;
