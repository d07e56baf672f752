/**
 * Invariant: any string at all is parsed into a reading, never into an exception, and never into a guess: what does
 * not check out against its own check character, check digit or structure is refused with the reason.
 *
 * <p>Barcodes in, labels out. {@link brightseam.scan.ScanParser} turns what a wedge scanner, the camera or a keyboard
 * sent into a {@link brightseam.scan.ScanReading}; {@link brightseam.scan.Expected} says whether a screen can use it.
 */
package brightseam.scan;
