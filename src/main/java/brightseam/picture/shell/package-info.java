/** Invariant: only what {@link brightseam.picture.PictureCheck} lets in is kept, and it is given out as it came. */
package brightseam.picture.shell;
