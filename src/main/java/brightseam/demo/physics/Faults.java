package brightseam.demo.physics;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is wrong with a simulated chamber, beyond what is always a little wrong. Not safe for several threads. */
public final class Faults {

    private double leakLitresPerMinute;
    private double wetPpm;
    private boolean stuffy;
    private final Set<String> frozen = new HashSet<>();
    private final Map<String, Span> silent = new HashMap<>();
    private final List<AtArc> atNextArc = new ArrayList<>();
    private final List<Puff> puffs = new ArrayList<>();

    /** A stretch of elapsed time, both ends inside. */
    private record Span(long fromMillis, long toMillis) {}

    /** Room air that comes in at a moment. */
    private record Puff(long atMillis, double litres) {}

    /** What happens after the next arc has begun: a gauge falls silent, or where none is named, air enters. */
    private record AtArc(String silentGauge, double airLitres, Duration after, Duration length) {}

    /** From now on so much air more leaks into the chamber, litres a minute; 0 is tight. */
    public void leak(double litresPerMinute) {
        leakLitresPerMinute = litresPerMinute;
    }

    /** From now on the argon carries so much water more, ppm by volume; 0 is dry. */
    public void wetGas(double moisturePpm) {
        wetPpm = moisturePpm;
    }

    /** Whether the room's ventilation stands still. */
    public void ventilationOff(boolean off) {
        stuffy = off;
    }

    /** From now on the gauge gives the value that it gave last. */
    public void freeze(String gauge) {
        frozen.add(gauge);
    }

    /** From {@code fromMillis} to {@code toMillis} the gauge gives nothing. */
    public void silence(String gauge, long fromMillis, long toMillis) {
        silent.put(gauge, new Span(fromMillis, toMillis));
    }

    /** The gauge works again. */
    public void mend(String gauge) {
        frozen.remove(gauge);
        silent.remove(gauge);
    }

    /** The gauge will be silent for {@code length}, beginning {@code after} the start of the next arc. */
    public void silenceInNextArc(String gauge, Duration after, Duration length) {
        atNextArc.add(new AtArc(gauge, 0, after, length));
    }

    /** So much air will come in {@code after} the start of the next arc. */
    public void puffInNextArc(double litres, Duration after) {
        atNextArc.add(new AtArc("", litres, after, Duration.ZERO));
    }

    /** So much air comes in at {@code atMillis}. */
    public void puff(double litres, long atMillis) {
        puffs.add(new Puff(atMillis, litres));
    }

    /** Nothing is wrong any more. */
    public void mendAll() {
        leak(0);
        wetGas(0);
        ventilationOff(false);
        frozen.clear();
        silent.clear();
        atNextArc.clear();
        puffs.clear();
    }

    void arcBegins(long atMillis) {
        for (AtArc due : atNextArc) {
            long from = atMillis + due.after().toMillis();
            if (due.silentGauge().isEmpty()) {
                puff(due.airLitres(), from);
            } else {
                silence(due.silentGauge(), from, from + due.length().toMillis());
            }
        }
        atNextArc.clear();
    }

    /** The air that has come in up to {@code atMillis} and was not asked for yet, litres. */
    double puffed(long atMillis) {
        double litres = puffs.stream().filter(puff -> puff.atMillis() <= atMillis).mapToDouble(Puff::litres).sum();
        puffs.removeIf(puff -> puff.atMillis() <= atMillis);
        return litres;
    }

    double leak() {
        return leakLitresPerMinute;
    }

    double wet() {
        return wetPpm;
    }

    boolean isStuffy() {
        return stuffy;
    }

    boolean isFrozen(String gauge) {
        return frozen.contains(gauge);
    }

    boolean isSilent(String gauge, long atMillis) {
        Span span = silent.get(gauge);
        return span != null && atMillis >= span.fromMillis() && atMillis <= span.toMillis();
    }
}
