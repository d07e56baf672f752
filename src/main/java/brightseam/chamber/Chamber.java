package brightseam.chamber;

import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * One welding chamber with its gear.
 *
 * @param station its label
 * @param terms volumes, flows, lock, limits, manifold, materials
 * @param connected the argon that feeds it, first connected first
 * @param leak the last leak test; empty where none was entered
 * @param counted the sessions whose argon was counted
 */
public record Chamber(StationId station, ChamberTerms terms, List<SupplyId> connected, Optional<LeakTest> leak,
        SortedSet<SessionId> counted) {

    /** Copies the collections. */
    public Chamber {
        connected = List.copyOf(connected);
        counted = Collections.unmodifiableSortedSet(new TreeSet<>(counted));
    }

    /** The chamber after {@code event}; {@code before} is empty for the first one only. */
    public static Chamber evolve(Optional<Chamber> before, ChamberEvent event) {
        return switch (event) {
            case ChamberEvent.Registered first ->
                new Chamber(first.station(), first.terms(), List.of(), Optional.empty(), new TreeSet<>());
            case ChamberEvent.TermsChanged changed -> known(before, event).with(changed.terms());
            case ChamberEvent.LeakTested tested -> known(before, event).with(new LeakTest(tested.origin().at(),
                    tested.airLitresPerMinute(), tested.mixingEfficiency(), tested.how(), tested.signer().name()));
            case ChamberEvent.ChangedOver over -> known(before, event).changedOver(over);
            case ChamberEvent.ArgonUsed used -> known(before, event).counting(used.report().session());
        };
    }

    /** Air that leaks in by the last test, litres a minute; zero where none was entered. */
    public BigDecimal leakLitresPerMinute() {
        return leak.map(LeakTest::airLitresPerMinute).orElse(BigDecimal.ZERO);
    }

    /** The share of the purge flow that counts, by the last fit; 1, full mixing, where none was entered. */
    public BigDecimal mixingEfficiency() {
        return leak.flatMap(LeakTest::mixingEfficiency).orElse(BigDecimal.ONE);
    }

    private static Chamber known(Optional<Chamber> before, ChamberEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not registered: " + event.station()));
    }

    private Chamber with(ChamberTerms changed) {
        return new Chamber(station, changed, connected, leak, counted);
    }

    private Chamber with(LeakTest test) {
        return new Chamber(station, terms, connected, Optional.of(test), counted);
    }

    private Chamber changedOver(ChamberEvent.ChangedOver over) {
        return new Chamber(station, terms, Stream.concat(
                connected.stream().filter(supply -> over.off().filter(supply::equals).isEmpty()),
                over.on().stream()).toList(), leak, counted);
    }

    private Chamber counting(SessionId session) {
        SortedSet<SessionId> more = new TreeSet<>(counted);
        more.add(session);
        return new Chamber(station, terms, connected, leak, more);
    }
}
