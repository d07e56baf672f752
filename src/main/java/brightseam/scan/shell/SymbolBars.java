package brightseam.scan.shell;

import com.google.zxing.common.BitMatrix;

/** Runs of dark modules of a symbol, each as one bar, in units of a module with the quiet zone around them. */
final class SymbolBars {

    private SymbolBars() {}

    /** Takes one bar. */
    @FunctionalInterface
    interface Bar<X extends Exception> {
        void draw(int left, int top, int width) throws X;
    }

    static <X extends Exception> void each(BitMatrix modules, int quietZone, Bar<X> bar) throws X {
        for (int row = 0; row < modules.getHeight(); row++) {
            int column = 0;
            while (column < modules.getWidth()) {
                int end = column;
                while (end < modules.getWidth() && modules.get(end, row)) {
                    end++;
                }
                if (end > column) {
                    bar.draw(column + quietZone, row + quietZone, end - column);
                }
                column = end + 1;
            }
        }
    }

    /** How many modules the symbol takes across, quiet zone included. */
    static int side(BitMatrix modules, int quietZone) {
        return Math.max(modules.getWidth(), modules.getHeight()) + 2 * quietZone;
    }
}
