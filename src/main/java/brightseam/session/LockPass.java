package brightseam.session;

import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * One opening of the inner door.
 *
 * @param number from 1 in this session
 * @param openedAt when the inner door opened
 * @param by the printed name of who opened it
 * @param in labels of what went in
 * @param out labels of what went out
 * @param purgedFor how long the lock had been purged
 * @param cycles how many cycles it had had
 * @param lockOxygenPpm oxygen in the lock at the opening, where a meter tells
 * @param chamberOxygenPpmBefore oxygen in the chamber just before, where a meter tells
 * @param shutAt when the inner door shut; empty while it is open
 * @param effect what the opening did to the chamber; empty until that is known
 */
public record LockPass(int number, Moment openedAt, String by, List<String> in, List<String> out, Duration purgedFor,
        int cycles, Optional<BigDecimal> lockOxygenPpm, Optional<BigDecimal> chamberOxygenPpmBefore,
        Optional<Moment> shutAt, Optional<Effect> effect) {

    /** Copies the lists. */
    public LockPass {
        in = List.copyOf(in);
        out = List.copyOf(out);
    }

    /**
     * What an opening did to the chamber.
     *
     * @param oxygenPpmHighest the highest reading from the opening until {@code within} after the door shut
     * @param within how long was looked
     * @param proven whether readings without a gap say so
     */
    public record Effect(BigDecimal oxygenPpmHighest, Duration within, boolean proven) {}

    LockPass with(String wentOut) {
        return new LockPass(number, openedAt, by, in, java.util.stream.Stream.concat(
                out.stream(), java.util.stream.Stream.of(wentOut)).toList(), purgedFor, cycles, lockOxygenPpm,
                chamberOxygenPpmBefore, shutAt, effect);
    }

    LockPass without(String cameBack) {
        return new LockPass(number, openedAt, by, in, out.stream().filter(label -> !label.equals(cameBack)).toList(),
                purgedFor, cycles, lockOxygenPpm, chamberOxygenPpmBefore, shutAt, effect);
    }

    LockPass shut(Moment at) {
        return new LockPass(number, openedAt, by, in, out, purgedFor, cycles, lockOxygenPpm, chamberOxygenPpmBefore,
                Optional.of(at), effect);
    }

    LockPass with(Effect known) {
        return new LockPass(number, openedAt, by, in, out, purgedFor, cycles, lockOxygenPpm, chamberOxygenPpmBefore,
                shutAt, Optional.of(known));
    }
}
