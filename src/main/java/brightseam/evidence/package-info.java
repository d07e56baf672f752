/**
 * Invariant: what a file of evidence proves follows from its bytes and from keys that came another way; no server, no
 * database and nothing that the file says of itself is trusted.
 */
package brightseam.evidence;
