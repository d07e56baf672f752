/**
 * Invariant: a chart is drawn from what was measured and nothing else: what is missing stays empty, what is doubtful is
 * marked by its shape, and the limit is a line with its value.
 *
 * <p>{@code SeriesChart} draws a meter's series on a {@code Canvas}: as SVG on screens, with a pen on paper.
 */
package brightseam.chart;
