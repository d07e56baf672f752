/**
 * Invariant: a check changes nothing; a backup is whole or not there; a restored folder was checked before anybody is
 * told that it is good.
 *
 * <p>Reads database, heads and keys for the check, makes fresh projections beside the shop's own, packs and unpacks
 * backups.
 */
package brightseam.check.shell;
