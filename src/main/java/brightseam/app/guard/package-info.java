/**
 * Invariant: whoever asks a service for something holds, in the register and at that moment, a role that the table of
 * {@link brightseam.app.guard.Permissions} names for it; what the table does not name, nobody may.
 *
 * <p>Pages hide what their readers may not do; here it is refused.
 */
package brightseam.app.guard;
