/**
 * Invariant: what is signed is a tree that is on disk and extends every tree that was signed before; where the two do
 * not fit, nothing is signed any more and the page says so.
 *
 * <p>Heads, keys and witnesses. {@code heads.txt} gets a head first and is forced; the database's rows follow, so that
 * after a crash they are made anew from it and from the entries.
 */
package brightseam.seal.shell;
