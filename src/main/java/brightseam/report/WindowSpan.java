package brightseam.report;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.traveller.Handling;
import brightseam.traveller.WindowEnd;
import java.time.Duration;
import java.util.Optional;

/**
 * A stretch of a clean window under one handling.
 *
 * @param opens whether the window was opened at its start
 * @param handling how the pieces were kept
 * @param bin in which bin
 * @param from when it began
 * @param to when it ended; empty while it runs
 * @param left what was left of the window at its end if kept on like this
 * @param end why the whole window ended with it, where it did
 */
public record WindowSpan(boolean opens, Handling handling, Optional<BinId> bin, Moment from, Optional<Moment> to,
        Optional<Duration> left, Optional<WindowEnd> end) {}
