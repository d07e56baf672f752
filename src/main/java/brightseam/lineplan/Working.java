package brightseam.lineplan;

import brightseam.kernel.BadgeId;

/**
 * Somebody who works at the line.
 *
 * @param badge whose
 * @param name what people call them
 */
public record Working(BadgeId badge, String name) {}
