/**
 * Invariant: of a file with a problem nothing is used; what is in use is read from the ledger, never from the folder.
 *
 * <p>Procedure files, their schema and positions, approvals, and the command that checks a folder without a server.
 */
package brightseam.procedure.shell;
