package brightseam.demo.physics;

import java.util.List;

/**
 * What people have set at a chamber. Flows are litres a minute.
 *
 * @param purgeLitresPerMinute argon that the chamber's valve lets in
 * @param lockLitresPerMinute argon that the lock's valve lets in
 * @param open whether the chamber stands open
 * @param outerOpen whether the lock's outer door is open
 * @param innerOpen whether the lock's inner door is open
 * @param arc whether an arc burns
 * @param connected labels of the argon that is connected, first drawn from first
 * @param attended whether anybody works there; nobody needs a reading each second of a chamber that stands open
 */
public record Situation(double purgeLitresPerMinute, double lockLitresPerMinute, boolean open, boolean outerOpen,
        boolean innerOpen, boolean arc, List<String> connected, boolean attended) {

    /** Copies the list. */
    public Situation {
        connected = List.copyOf(connected);
    }

    /** Open and left alone, with {@code connected} at its manifold. */
    public static Situation idle(List<String> connected) {
        return new Situation(0, 0, true, false, false, false, connected, false);
    }
}
