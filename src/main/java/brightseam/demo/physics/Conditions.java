package brightseam.demo.physics;

/**
 * What goes on at a chamber, unchanged for a while. Flows are litres a minute.
 *
 * @param purgeLitresPerMinute argon into the chamber
 * @param lockLitresPerMinute argon into the lock
 * @param argonOxygenPpm oxygen in that argon
 * @param argonMoisturePpm water in that argon
 * @param leakLitresPerMinute room air that leaks into the chamber
 * @param lockLeakLitresPerMinute room air that leaks into the lock
 * @param open whether the chamber stands open
 * @param outerOpen whether the lock's outer door is open
 * @param innerOpen whether the lock's inner door is open
 * @param arc whether an arc burns
 * @param ventilationLitresPerMinute fresh air into the room
 */
public record Conditions(double purgeLitresPerMinute, double lockLitresPerMinute, double argonOxygenPpm,
        double argonMoisturePpm, double leakLitresPerMinute, double lockLeakLitresPerMinute, boolean open,
        boolean outerOpen, boolean innerOpen, boolean arc, double ventilationLitresPerMinute) {

    /** Refuses flows and contents that are negative or no number. */
    public Conditions {
        for (double each : new double[] {purgeLitresPerMinute, lockLitresPerMinute, argonOxygenPpm, argonMoisturePpm,
                leakLitresPerMinute, lockLeakLitresPerMinute, ventilationLitresPerMinute}) {
            if (!(each >= 0 && Double.isFinite(each))) {
                throw new IllegalArgumentException("flows and contents are not negative: " + each);
            }
        }
    }

    /** Everything shut, nothing flows, nothing leaks. */
    public static Conditions still() {
        return new Conditions(0, 0, 0, 0, 0, 0, false, false, false, false, 0);
    }

    /** With {@code litresPerMinute} of argon into the chamber. */
    public Conditions purging(double litresPerMinute) {
        return new Conditions(litresPerMinute, lockLitresPerMinute, argonOxygenPpm, argonMoisturePpm,
                leakLitresPerMinute, lockLeakLitresPerMinute, open, outerOpen, innerOpen, arc,
                ventilationLitresPerMinute);
    }

    /** With {@code litresPerMinute} of argon into the lock. */
    public Conditions purgingLock(double litresPerMinute) {
        return new Conditions(purgeLitresPerMinute, litresPerMinute, argonOxygenPpm, argonMoisturePpm,
                leakLitresPerMinute, lockLeakLitresPerMinute, open, outerOpen, innerOpen, arc,
                ventilationLitresPerMinute);
    }

    /** With argon that has so much in it. */
    public Conditions argon(double oxygenPpm, double moisturePpm) {
        return new Conditions(purgeLitresPerMinute, lockLitresPerMinute, oxygenPpm, moisturePpm,
                leakLitresPerMinute, lockLeakLitresPerMinute, open, outerOpen, innerOpen, arc,
                ventilationLitresPerMinute);
    }

    /** With so much air that leaks in. */
    public Conditions leaking(double chamberLitresPerMinute, double lockLeak) {
        return new Conditions(purgeLitresPerMinute, lockLitresPerMinute, argonOxygenPpm, argonMoisturePpm,
                chamberLitresPerMinute, lockLeak, open, outerOpen, innerOpen, arc, ventilationLitresPerMinute);
    }

    /** With these doors open: the chamber's own, the lock's outer, the lock's inner. */
    public Conditions doors(boolean chamber, boolean outer, boolean inner) {
        return new Conditions(purgeLitresPerMinute, lockLitresPerMinute, argonOxygenPpm, argonMoisturePpm,
                leakLitresPerMinute, lockLeakLitresPerMinute, chamber, outer, inner, arc,
                ventilationLitresPerMinute);
    }

    /** With an arc that burns, or not. */
    public Conditions arc(boolean burns) {
        return new Conditions(purgeLitresPerMinute, lockLitresPerMinute, argonOxygenPpm, argonMoisturePpm,
                leakLitresPerMinute, lockLeakLitresPerMinute, open, outerOpen, innerOpen, burns,
                ventilationLitresPerMinute);
    }

    /** With so much fresh air into the room. */
    public Conditions ventilated(double litresPerMinute) {
        return new Conditions(purgeLitresPerMinute, lockLitresPerMinute, argonOxygenPpm, argonMoisturePpm,
                leakLitresPerMinute, lockLeakLitresPerMinute, open, outerOpen, innerOpen, arc, litresPerMinute);
    }

    double argonPpm(Gas gas) {
        return switch (gas) {
            case OXYGEN -> argonOxygenPpm;
            case MOISTURE -> argonMoisturePpm;
        };
    }
}
