package brightseam.bath;

/**
 * One line of a calculation, so that a person can follow it on paper.
 *
 * @param quantity what is computed, such as {@code total acid}
 * @param formula how, with the numbers that went in
 * @param number what came out, unrounded
 * @param unit its unit
 */
public record Working(String quantity, String formula, double number, String unit) {}
