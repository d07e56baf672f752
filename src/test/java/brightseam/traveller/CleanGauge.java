package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.procedure.BinClass;
import brightseam.procedure.WindowLimits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** The clean window reckoned a second way for {@link RecordCheck}: shares of the whole at thirty decimals. */
final class CleanGauge {

    private Optional<WindowLimits> limits = Optional.empty();
    private Optional<BinClass> bin = Optional.empty();
    private boolean closed;
    private Optional<BigDecimal> inside = Optional.empty();
    private BigDecimal used = BigDecimal.ZERO;
    private Moment since;

    void wear(Moment now) {
        if (limits.isPresent()) {
            BigDecimal millis = BigDecimal.valueOf(now.elapsedMillis() - since.elapsedMillis());
            used = used.add(millis.divide(limitMillis(limits.get()), 30, RoundingMode.HALF_UP));
        }
        since = now;
    }

    void put(BinClass into, boolean isClosed) {
        bin = Optional.of(into);
        closed = isClosed;
    }

    void close(boolean isClosed) {
        closed = isClosed;
    }

    /** From now on the window runs as it does here, whatever becomes of the bin. */
    void enter() {
        inside = limits.map(this::limitMillis);
        bin = Optional.empty();
        closed = false;
    }

    /** Out through the lock: in the open, whatever comes. */
    void pass(boolean inward) {
        if (inside.isPresent() && !inward) {
            inside = limits.map(whole -> BigDecimal.valueOf(whole.open().toMillis()));
        }
    }

    /** Back at the bench. */
    void leaveIf(boolean left) {
        inside = left ? Optional.empty() : inside;
    }

    void open(WindowLimits whole) {
        limits = Optional.of(whole);
        used = BigDecimal.ZERO;
    }

    void end() {
        limits = Optional.empty();
    }

    boolean isOpen() {
        return limits.isPresent();
    }

    /** Closed, or in the chamber, where no bag is. */
    boolean isShut() {
        return closed || inside.isPresent();
    }

    boolean isClosed() {
        return closed;
    }

    Optional<BinClass> bin() {
        return bin;
    }

    BigDecimal leftMillis() {
        return BigDecimal.ONE.subtract(used).multiply(limitMillis(limits.orElseThrow()));
    }

    private BigDecimal limitMillis(WindowLimits whole) {
        if (inside.isPresent()) {
            return inside.get();
        }
        if (!closed || bin.isEmpty()) {
            return BigDecimal.valueOf(whole.open().toMillis());
        }
        return BigDecimal.valueOf(switch (bin.get()) {
            case SHOP_BIN, PROCESS_BASKET -> whole.open().toMillis();
            case CLEAN_BIN -> whole.closedCleanBin().toMillis();
            case SEALED_BAG -> whole.sealedBag().toMillis();
        });
    }
}
