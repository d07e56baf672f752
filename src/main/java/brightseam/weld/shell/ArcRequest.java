package brightseam.weld.shell;

import brightseam.kernel.TravellerId;
import brightseam.weld.ArcPurpose;
import java.util.Optional;

/**
 * What a welder says before an arc.
 *
 * @param purpose what it is for
 * @param filler the filler's traveller, as scanned or chosen; empty where nothing is added
 * @param backSideConfirmed whether the back side was looked at and is as the map asks
 */
public record ArcRequest(ArcPurpose purpose, Optional<TravellerId> filler, boolean backSideConfirmed) {}
