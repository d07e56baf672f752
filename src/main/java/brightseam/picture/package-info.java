/**
 * Invariant: a picture is found by the SHA-256 of its bytes, so what a record names can never be another picture.
 *
 * <p>Photographs and drawings: what is let in, judged by the bytes alone and never by what a browser calls them.
 */
package brightseam.picture;
