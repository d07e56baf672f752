/** Invariant: a token is shown once and kept nowhere. Keeps the shop systems, knows them again, releases for them. */
package brightseam.remote.shell;
