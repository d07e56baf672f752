package brightseam.traveller.shell;

import brightseam.kernel.BadgeId;

/** Who acts, and on which tablet. */
public record Actor(BadgeId badge, String tablet) {}
