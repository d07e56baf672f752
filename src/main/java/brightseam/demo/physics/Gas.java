package brightseam.demo.physics;

/** What is followed in parts per million by volume; the rest is argon and nitrogen. */
public enum Gas {
    /** Oxygen; outdoors 20.946 % of dry air, US Standard Atmosphere 1976 (from memory). */
    OXYGEN(209_460),
    /** Water vapour; outdoors 1 % by volume, invented: a mild day. */
    MOISTURE(10_000);

    private final double outdoorsPpm;

    Gas(double outdoorsPpm) {
        this.outdoorsPpm = outdoorsPpm;
    }

    /** How much of it is in the air outdoors, in ppm by volume. */
    public double outdoorsPpm() {
        return outdoorsPpm;
    }
}
