/**
 * Invariant: a file of evidence is made from the ledger and its seals alone, and checked without them:
 * {@code VerifyFile} starts no framework and opens neither database nor network.
 */
package brightseam.evidence.shell;
