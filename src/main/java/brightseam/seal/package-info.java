/**
 * Invariant: a head, a key and a proof are checked by what RFC 9162, RFC 8032 and the open C2SP forms say, from the
 * bytes alone; nothing here knows what an entry means.
 */
package brightseam.seal;
