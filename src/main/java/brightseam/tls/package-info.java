/**
 * Invariant: the shop's own authority vouches for machines of a shop's network only, and every certificate of the
 * server is renewed before it ends and when the machine's names or addresses change.
 *
 * <p>What a certificate has to say and when it is due; free of keys and files.
 */
package brightseam.tls;
