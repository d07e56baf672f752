package brightseam.session;

import brightseam.kernel.Moment;

/**
 * What the lead lets stay out although it is missing; it may come later through the lock.
 *
 * @param key the key of the line of the list
 * @param reason in the lead's words
 * @param by the printed name of who allowed it
 */
public record LeftOut(String key, String reason, String by, Moment at) {}
