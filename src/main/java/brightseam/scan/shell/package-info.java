/**
 * Invariant: a frame's bytes and pixels are counted before it is decoded, and every label that is printed reads back
 * as what it was printed for.
 *
 * <p>Camera frames in ({@link brightseam.scan.shell.FrameReader}), labels out
 * ({@link brightseam.scan.shell.LabelPrinter} for paper, {@link brightseam.scan.shell.LabelImage} for screens).
 */
package brightseam.scan.shell;
