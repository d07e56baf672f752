package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.Syntax;
import brightseam.kernel.TravellerId;
import java.math.BigDecimal;
import java.util.List;

/**
 * What the meters proved of one run of a joint while it was hot. Computed from the stored series, never typed.
 *
 * @param joint which joint
 * @param session the chamber session
 * @param chamber the chamber's station
 * @param run which run of the joint, from 1
 * @param startedAt when the arc began
 * @param stoppedAt when it ended
 * @param hotUntil how far the evidence reaches: the end of the cooling hold
 * @param parts every traveller whose pieces are welded there
 * @param filler the filler's type, or {@code none}
 * @param welder whose badge
 * @param backSide {@code purged} or {@code vented}
 * @param oxygenMeter the meter whose series it is
 * @param oxygenPpmLimit the limit, ppm by volume
 * @param oxygenPpmHighest the highest reading, ppm by volume, one decimal
 * @param oxygenPpmMean the mean over time, ppm by volume, one decimal
 * @param secondsAbove how long it was above the limit, in seconds, one decimal
 * @param excursions the stretches above the limit, in order
 * @param gaps the stretches without a usable reading, in order
 * @param proven whether usable readings cover the whole time, without a gap that is too long
 * @param seriesSha256 the hash of the stretch of the series, in hex
 * @param contacts what touched the joint: filler, argon, meters, gloves, as their registers have them
 * @param simulated whether any reading came from the simulator
 */
public record JointFact(JointId joint, SessionId session, StationId chamber, int run, Moment startedAt,
        Moment stoppedAt, Moment hotUntil, List<Joined> parts, String filler, BadgeId welder, String backSide,
        SupplyId oxygenMeter, BigDecimal oxygenPpmLimit, BigDecimal oxygenPpmHighest, BigDecimal oxygenPpmMean,
        BigDecimal secondsAbove, List<SpanFact> excursions, List<SpanFact> gaps, boolean proven, String seriesSha256,
        List<Contact> contacts, boolean simulated) {

    private static final int WORD_LENGTH_MAX = 40;
    private static final int HASH_LENGTH = 64;

    /** Refuses a run below 1, a joint of nothing, times that run backwards and a hash that is none. */
    public JointFact {
        filler = Syntax.text("filler", filler, WORD_LENGTH_MAX);
        backSide = Syntax.text("back side", backSide, WORD_LENGTH_MAX);
        parts = List.copyOf(parts);
        excursions = List.copyOf(excursions);
        gaps = List.copyOf(gaps);
        contacts = List.copyOf(contacts);
        if (run < 1 || parts.isEmpty()) {
            throw new IllegalArgumentException("a joint has a run from 1 and at least one part");
        }
        if (stoppedAt.isBefore(startedAt) || hotUntil.isBefore(stoppedAt)) {
            throw new IllegalArgumentException("an arc ends after it began, and cools after that");
        }
        if (seriesSha256.length() != HASH_LENGTH) {
            throw new IllegalArgumentException("a SHA-256 in hex has 64 characters");
        }
    }

    /** The travellers whose pieces are welded there, sorted. */
    public List<TravellerId> travellers() {
        return parts.stream().map(Joined::traveller).distinct().sorted().toList();
    }

    /** Whether the oxygen was above its limit at any time. */
    public boolean exceedsLimit() {
        return !excursions.isEmpty() || secondsAbove.signum() > 0;
    }
}
