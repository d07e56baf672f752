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
        double motionPixels, double glare, double ink, double paper, double noise) {}
