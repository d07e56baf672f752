package brightseam.weld;

import java.util.Optional;

/**
 * What is known of the back side before an arc.
 *
 * @param confirmed whether the welder says that it is purged or vented as the map asks
 * @param oxygen what a meter on the back side says; empty where there is none
 */
public record BackSideFact(boolean confirmed, Optional<GasReading> oxygen) {}
