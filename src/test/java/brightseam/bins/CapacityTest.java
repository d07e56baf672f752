package brightseam.bins;

import static brightseam.kernel.Samples.ORIGIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CapacityTest {

    private static final BinId BASKET = new BinId("B-0201");
    private static final TravellerId TUBES = new TravellerId("T-1042");
    private static final TravellerId NODES = new TravellerId("T-1043");
    private static final TravellerId APART = new TravellerId("T-1042.1");
    private static final BinEvent REGISTERED =
            new BinEvent.Registered(ORIGIN, BASKET, BinClass.PROCESS_BASKET, Optional.of(4));
    private static final Map<TravellerId, LotSize> SIZES = Map.of(
            TUBES, size("LF-101", 6, "0.9", "3.2"), NODES, size("LF-110", 4, "0.6", "5"));

    @Test
    void a_capacity_is_set_and_set_again() {
        Capacity first = capacity(12, "1.2", null);
        Bin bin = bin(first);
        assertThat(bin.capacity()).isEqualTo(first);
        assertThat(decide(bin, new BinCommand.SetCapacity(BASKET, first, ORIGIN)))
                .isEqualTo(Decision.accepted(List.of()));
        Capacity none = Capacity.ofTravellers(Optional.empty());
        assertThat(decide(bin, new BinCommand.SetCapacity(BASKET, none, ORIGIN)))
                .isEqualTo(Decision.accepted(List.of(new BinEvent.CapacitySet(ORIGIN, BASKET, none))));
        assertThat(BinDecider.decide(Optional.empty(), new BinCommand.SetCapacity(BASKET, none, ORIGIN)))
                .isEqualTo(Decision.refused(List.of(new BinRefusal.BinUnknown(BASKET))));
    }

    @Test
    void a_bin_registered_before_capacities_keeps_its_number_of_lots() {
        Bin bin = Bin.evolve(Optional.empty(), REGISTERED);
        assertThat(bin.capacity()).isEqualTo(Capacity.ofTravellers(Optional.of(4)));
        assertThat(bin.capacity().asksForSizes()).isFalse();
    }

    @Test
    void lots_go_in_up_to_the_limits_and_not_beyond() {
        assertThat(broken(with(capacity(10, "1.5", "8.2"), TUBES), put(NODES, SIZES))).isEmpty();
        assertThat(broken(with(capacity(9, "1.4999", "8.1999"), TUBES), put(NODES, SIZES))).containsExactly(
                new BinRefusal.BasketOverPieces(BASKET, 9, 10, List.of(TUBES, NODES)),
                new BinRefusal.BasketOverArea(BASKET, number("1.4999"), number("1.5"), List.of(TUBES, NODES)),
                new BinRefusal.BasketOverMass(BASKET, number("8.1999"), number("8.2"), List.of(TUBES, NODES)));
    }

    @Test
    void a_lot_that_is_too_large_by_itself_is_refused_too() {
        assertThat(broken(bin(capacity(null, "0.5", null)), put(TUBES, SIZES))).containsExactly(
                new BinRefusal.BasketOverArea(BASKET, number("0.5"), number("0.9"), List.of(TUBES)));
    }

    @Test
    void what_is_not_known_is_refused_by_name_and_not_guessed() {
        Map<TravellerId, LotSize> sizes = Map.of(TUBES, SIZES.get(TUBES), NODES,
                new LotSize("LF-110", 4, Optional.empty(), Optional.empty()));
        assertThat(broken(with(capacity(30, "9", null), TUBES), put(NODES, sizes))).containsExactly(
                new BinRefusal.BasketSizeUnknown(BASKET, Measure.AREA, List.of(NODES), List.of("LF-110")));
        assertThat(broken(with(capacity(30, null, "90"), NODES), put(TUBES, sizes))).containsExactly(
                new BinRefusal.BasketSizeUnknown(BASKET, Measure.MASS, List.of(NODES), List.of("LF-110")));
        assertThat(broken(with(capacity(30, null, null), NODES), put(TUBES, sizes))).isEmpty();
        assertThat(broken(bin(capacity(30, null, null)), put(TUBES, Map.of()))).containsExactly(
                new BinRefusal.BasketSizeUnknown(BASKET, Measure.PIECES, List.of(TUBES), List.of("T-1042")));
    }

    @Test
    void setting_pieces_apart_inside_takes_no_room() {
        Bin full = with(new Capacity(Optional.of(1), Optional.of(6), Optional.of(number("0.9")), Optional.empty()),
                TUBES);
        assertThat(decide(full, apart(TUBES, APART)))
                .isEqualTo(Decision.accepted(List.of(new BinEvent.PutIn(ORIGIN, BASKET, APART, false))));
        assertThat(broken(full, apart(NODES, APART))).containsExactly(new BinRefusal.NotInside(BASKET, NODES));
        assertThat(broken(full, apart(TUBES, TUBES))).containsExactly(new BinRefusal.AlreadyInside(BASKET, TUBES));
    }

    /** Random lots go in and out; whatever is inside never exceeds a limit, and what is refused would exceed one. */
    @Test
    void no_order_of_puts_and_takes_overfills_a_basket() {
        Random random = new Random(61);
        int refused = 0;
        for (int round = 0; round < 300; round++) {
            Map<TravellerId, LotSize> sizes = new HashMap<>();
            IntStream.range(0, 12).forEach(n -> sizes.put(new TravellerId("T-" + n), size("P-" + n,
                    1 + random.nextInt(9), "0." + (1 + random.nextInt(9)), 1 + random.nextInt(9) + ".5")));
            Capacity capacity = capacity(10 + random.nextInt(20), (1 + random.nextInt(2)) + ".25", "20");
            Bin bin = bin(capacity);
            for (int step = 0; step < 60; step++) {
                TravellerId lot = new TravellerId("T-" + random.nextInt(12));
                BinCommand command = bin.inside().contains(lot)
                        ? new BinCommand.TakeOut(BASKET, lot, ORIGIN) : put(lot, sizes);
                List<TravellerId> together = new ArrayList<>(bin.inside());
                together.add(lot);
                switch (decide(bin, command)) {
                    case Decision.Accepted<BinEvent> accepted -> {
                        for (BinEvent event : accepted.events()) {
                            bin = Bin.evolve(Optional.of(bin), event);
                        }
                        assertThat(fits(bin.inside(), sizes, capacity)).isTrue();
                    }
                    case Decision.Refused<BinEvent> ignored -> {
                        assertThat(fits(together, sizes, capacity)).isFalse();
                        refused++;
                    }
                }
            }
        }
        assertThat(refused).isGreaterThan(1000);
    }

    @Test
    void capacities_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> capacity(0, null, null)).hasMessageContaining("pieces");
        assertThatThrownBy(() -> capacity(null, "0", null)).hasMessageContaining("area");
        assertThatThrownBy(() -> capacity(null, null, "-1")).hasMessageContaining("mass");
        assertThatThrownBy(() -> Capacity.ofTravellers(Optional.of(0))).hasMessageContaining("travellers");
    }

    private static boolean fits(Iterable<TravellerId> lots, Map<TravellerId, LotSize> sizes, Capacity capacity) {
        int pieces = 0;
        BigDecimal area = BigDecimal.ZERO;
        BigDecimal mass = BigDecimal.ZERO;
        int count = 0;
        for (TravellerId lot : lots) {
            count++;
            pieces += sizes.get(lot).pieces();
            area = area.add(sizes.get(lot).areaSquareMetres().orElseThrow());
            mass = mass.add(sizes.get(lot).massKilograms().orElseThrow());
        }
        return count <= 4 && pieces <= capacity.pieces().orElseThrow()
                && area.compareTo(capacity.areaSquareMetres().orElseThrow()) <= 0
                && mass.compareTo(capacity.massKilograms().orElseThrow()) <= 0;
    }

    private static Bin bin(Capacity capacity) {
        return Bin.evolve(Optional.of(Bin.evolve(Optional.empty(), REGISTERED)),
                new BinEvent.CapacitySet(ORIGIN, BASKET, capacity));
    }

    private static Bin with(Capacity capacity, TravellerId inside) {
        return Bin.evolve(Optional.of(bin(capacity)), new BinEvent.PutIn(ORIGIN, BASKET, inside, false));
    }

    private static Capacity capacity(Integer pieces, String squareMetres, String kilograms) {
        return new Capacity(Optional.of(4), Optional.ofNullable(pieces),
                Optional.ofNullable(squareMetres).map(BigDecimal::new),
                Optional.ofNullable(kilograms).map(BigDecimal::new));
    }

    private static LotSize size(String part, int pieces, String squareMetres, String kilograms) {
        return new LotSize(part, pieces, Optional.of(number(squareMetres)), Optional.of(number(kilograms)));
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    private static BinCommand put(TravellerId traveller, Map<TravellerId, LotSize> sizes) {
        return new BinCommand.PutIn(BASKET, traveller, false, sizes, ORIGIN);
    }

    private static BinCommand apart(TravellerId from, TravellerId traveller) {
        return new BinCommand.SetApartInside(BASKET, from, traveller, false, ORIGIN);
    }

    private static Decision<BinEvent> decide(Bin bin, BinCommand command) {
        return BinDecider.decide(Optional.of(bin), command);
    }

    private static List<Refusal> broken(Bin bin, BinCommand command) {
        return decide(bin, command) instanceof Decision.Refused<BinEvent> refused ? refused.refusals() : List.of();
    }
}
