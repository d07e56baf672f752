package brightseam.line;

import brightseam.kernel.Moment;

/**
 * One filling of a tank.
 *
 * @param number from 1
 * @param at when it was made up
 */
public record Fill(int number, Moment at) {}
