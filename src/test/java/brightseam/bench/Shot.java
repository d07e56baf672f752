package brightseam.bench;

/**
 * How a picture of a label is taken and spoilt. Invented conditions; every one is drawn anew, up to the value here.
 *
 * @param name what the table calls it
 * @param distanceMillimetres from lens to label
 * @param tiltDegrees the label leans this much, to a random side
 * @param rolls whether the label is turned in its own plane, to any angle
 * @param blurPixels standard deviation of a Gaussian blur
 * @param motionPixels length of a straight smear
 * @param glare the lamp's reflection at its brightest, in grey steps of 255
 * @param ink grey of the black print, 0 to 255
 * @param paper grey of the white paper, 0 to 255
 * @param noise standard deviation of the sensor's noise, in grey steps
 */
public record Shot(
        String name, double distanceMillimetres, double tiltDegrees, boolean rolls, double blurPixels,
        double motionPixels, double glare, double ink, double paper, double noise) {

    /** Held at a forearm's distance under good light. */
    public static Shot good(String name) {
        return new Shot(name, 400, 3, false, 0.7, 0, 0, 30, 220, 4);
    }

    Shot at(double millimetres) {
        return new Shot(name, millimetres, tiltDegrees, rolls, blurPixels, motionPixels, glare, ink, paper, noise);
    }

    Shot tilted(double degrees) {
        return new Shot(name, distanceMillimetres, degrees, rolls, blurPixels, motionPixels, glare, ink, paper, noise);
    }

    Shot rolled() {
        return new Shot(name, distanceMillimetres, tiltDegrees, true, blurPixels, motionPixels, glare, ink, paper, noise);
    }

    Shot blurred(double pixels) {
        return new Shot(name, distanceMillimetres, tiltDegrees, rolls, pixels, motionPixels, glare, ink, paper, noise);
    }

    Shot smeared(double pixels) {
        return new Shot(name, distanceMillimetres, tiltDegrees, rolls, blurPixels, pixels, glare, ink, paper, noise);
    }

    Shot glaring(double steps) {
        return new Shot(name, distanceMillimetres, tiltDegrees, rolls, blurPixels, motionPixels, steps, ink, paper, noise);
    }

    Shot printed(double darkest, double brightest) {
        return new Shot(
                name, distanceMillimetres, tiltDegrees, rolls, blurPixels, motionPixels, glare, darkest, brightest, noise);
    }

    Shot noisy(double steps) {
        return new Shot(name, distanceMillimetres, tiltDegrees, rolls, blurPixels, motionPixels, glare, ink, paper, steps);
    }
}
