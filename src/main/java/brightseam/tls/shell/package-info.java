/**
 * Invariant: private keys are in files that their owner alone reads, and nowhere else.
 *
 * <p>Keys, certificates and their files; what this machine is called.
 */
package brightseam.tls.shell;
