/**
 * Invariant: the bench shows one thing to do, decides nothing, and says of every scan and every touch what became of
 * it; what is refused is in the record.
 *
 * <p>{@code BenchModel} knows what is open on a tablet and carries touches and scans out; {@code BenchCard} is what the
 * screen shows, as data; the faces draw it.
 */
package brightseam.ui.bench;
