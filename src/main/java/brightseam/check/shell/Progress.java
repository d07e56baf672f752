package brightseam.check.shell;

import java.io.PrintStream;
import java.util.Locale;

/** Tells people how far a long piece of work is, at most once in two seconds. */
public final class Progress {

    private static final long PAUSE_NANOS = 2_000_000_000L;

    private final PrintStream out;
    private String work = "";
    private long began;
    private long told;

    /** Tells on {@code out}. */
    public Progress(PrintStream out) {
        this.out = out;
    }

    /** Begins a piece of work. */
    public void begin(String name) {
        work = name;
        began = System.nanoTime();
        told = began;
        out.println(name + " ...");
    }

    /** {@code done} of {@code all} are done. */
    public void at(long done, long all) {
        long now = System.nanoTime();
        if (now - told >= PAUSE_NANOS) {
            told = now;
            out.println(String.format(Locale.ROOT, "  %,d of %,d, %,d per second", done, all, perSecond(done, now)));
        }
    }

    /** Ends the piece of work, of which there were {@code done}. */
    public void end(long done, String unit) {
        long now = System.nanoTime();
        out.println(String.format(Locale.ROOT, "  %,d %s in %.1f s, %,d per second", done, unit,
                (now - began) / 1e9, perSecond(done, now)));
    }

    /** Says {@code line}. */
    public void say(String line) {
        out.println(line);
    }

    /** The piece of work that was begun last. */
    public String work() {
        return work;
    }

    private long perSecond(long done, long now) {
        return Math.round(done / Math.max(0.001, (now - began) / 1e9));
    }
}
