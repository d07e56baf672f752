package brightseam.supply;

import brightseam.kernel.ContactKind;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Surface;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A lot, a bottle, a tool or a gauge that touches titanium.
 *
 * @param id its label
 * @param kind what sort of thing it is
 * @param type which of that sort, a key of the shared table of supplies
 * @param title what people call it
 * @param lot the maker's lot, or the serial number of a single thing
 * @param maker who made it
 * @param lastDay the last day in the shop's zone on which it may be used: its expiry date, or the day when a gauge's
 *     calibration ends; empty where it does not age
 * @param mayTouch what it may touch
 * @param standing where it is in its life
 * @param contamination what it touched that it should not have; empty where it is clean
 */
public record Supply(
        SupplyId id,
        ContactKind kind,
        String type,
        String title,
        String lot,
        String maker,
        Optional<LocalDate> lastDay,
        Set<Surface> mayTouch,
        Standing standing,
        Optional<String> contamination) {

    /** Copies the set, sorted. */
    public Supply {
        Set<Surface> copy = EnumSet.noneOf(Surface.class);
        copy.addAll(mayTouch);
        mayTouch = Collections.unmodifiableSet(copy);
    }

    /** The supply after {@code event}; {@code before} is empty for the first one only. */
    public static Supply evolve(Optional<Supply> before, SupplyEvent event) {
        return switch (event) {
            case SupplyEvent.Registered e -> new Supply(e.supply(), e.kind(), e.type(), e.title(), e.lot(), e.maker(),
                    e.lastDay(), Set.copyOf(e.mayTouch()), Standing.UNOPENED, Optional.empty());
            case SupplyEvent.Opened e -> known(before, e).standing(Standing.OPENED);
            case SupplyEvent.Contaminated e -> known(before, e).contamination(Optional.of(e.what()));
            case SupplyEvent.MadeClean e -> known(before, e).contamination(Optional.empty());
            case SupplyEvent.Calibrated e -> known(before, e).lastDay(Optional.of(e.until()));
            case SupplyEvent.UsedUp e -> known(before, e).standing(Standing.USED_UP);
            case SupplyEvent.Retired e -> known(before, e).standing(Standing.RETIRED);
        };
    }

    /** Whether it measures, so that its last day is its calibration's. */
    public boolean isGauge() {
        return kind == ContactKind.GAUGE;
    }

    /** Whether it is one lasting thing that can be cleaned, rather than a lot that is thrown away. */
    public boolean isCleanable() {
        return kind == ContactKind.TOOL || kind == ContactKind.GAUGE;
    }

    /** Whether its last day is over on {@code today}. */
    public boolean isPast(LocalDate today) {
        return lastDay.filter(today::isAfter).isPresent();
    }

    private static Supply known(Optional<Supply> before, SupplyEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not registered: " + event.supply()));
    }

    private Supply standing(Standing next) {
        return new Supply(id, kind, type, title, lot, maker, lastDay, mayTouch, next, contamination);
    }

    private Supply contamination(Optional<String> next) {
        return new Supply(id, kind, type, title, lot, maker, lastDay, mayTouch, standing, next);
    }

    private Supply lastDay(Optional<LocalDate> next) {
        return new Supply(id, kind, type, title, lot, maker, next, mayTouch, standing, contamination);
    }
}
