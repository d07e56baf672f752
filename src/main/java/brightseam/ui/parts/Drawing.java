package brightseam.ui.parts;

/** A drawing as SVG text and the same thing as a sentence; for screen and paper, black on white. */
public sealed interface Drawing permits Drawn, HoldBar, Lanes, ReadingScale, SpanChart, Trend {

    /** One {@code <svg>} element, no scripts, no outside references, no ids. */
    String svg();

    /** What the drawing shows, as a sentence. */
    String words();
}
