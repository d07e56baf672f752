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
