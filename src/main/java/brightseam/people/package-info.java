/**
 * Invariant: a person is deactivated, never deleted; whether X may sign Y at t is answered here and nowhere else.
 */
package brightseam.people;
