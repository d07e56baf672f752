package brightseam.ui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Card;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A load of several procedures on the card, and the loads that run, in the order in which they turn. */
class LoadTest {

    private static final Moment NOW = new Moment(Instant.parse("2031-03-04T08:00:00Z"), 10_000_000);
    private static final BadgeId ME = new BadgeId("P-0101");
    private final LedLot tube = new LedLot("T-1042");
    private final LedLot fitting = new LedLot("T-1045", "machined-fitting.yaml");

    private Load load() {
        return Load.around(tube.card(), Optional.of(new BinId("B-1")), List.of(tube.card(), fitting.card()));
    }

    private Load at(String step, Class<? extends NextAction> action) {
        for (LedLot lot : List.of(tube, fitting)) {
            lot.until(next -> action.isInstance(next)
                    && next.about().filter(one -> one.id().value().equals(step)).isPresent());
        }
        return load();
    }

    @Test
    void travellers_of_two_procedures_at_one_step_are_one_load_within_the_tightest_limits() {
        Load load = at("alkaline-degrease", NextAction.Holding.class);
        assertEquals(List.of(tube.card().id(), fitting.card().id()), load.ids());
        assertEquals(Duration.ofMinutes(15), load.next().about().orElseThrow().hold().orElseThrow().minimum());
        assertEquals("60 (T-1045: 50)", load.number(load.next().about().orElseThrow()));
    }

    @Test
    void the_later_of_two_earliest_ends_is_the_loads() {
        Load load = at("acid-pickle", NextAction.Holding.class);
        NextAction.Holding holding = assertInstanceOf(NextAction.Holding.class, load.next());
        List<NextAction.Holding> each = load.together().stream().map(Card::next)
                .map(NextAction.Holding.class::cast).toList();
        assertEquals(Stream.of(each.getFirst().earliest(), each.getLast().earliest()).max(Moment::compareTo),
                Optional.of(holding.earliest()));
        assertEquals(each.stream().flatMap(one -> one.latest().stream()).min(Moment::compareTo), holding.latest());
    }

    @Test
    void the_card_says_what_the_other_procedure_says() {
        Load load = at("alkaline-degrease", NextAction.Begin.class);
        BenchCard card = new CardWriter(LedLot.VOCABULARY, ZoneOffset.UTC)
                .write(load, load.next(), MadeReady.NOTHING, tube.now());
        assertEquals("Step 60 (T-1045: 50) · degrease tank", card.line());
        assertTrue(card.also().getFirst().startsWith("T-1045: Fittings into the basket"), card.also().toString());
        assertTrue(card.apart().isEmpty());
    }

    @Test
    void who_stands_elsewhere_is_apart() {
        at("alkaline-degrease", NextAction.Begin.class);
        tube.follow(tube.card().next());
        assertEquals(List.of(tube.card().id()), load().ids());
        assertEquals(List.of(fitting.card().id()), load().apart().stream().map(Card::id).toList());
    }

    @Test
    void what_turns_next_comes_first_and_what_cannot_spoil_last() {
        Running dried = held("dried", Duration.ofMinutes(40), 15, null);
        Running soaking = held("soaking", Duration.ofMinutes(4), 10, 30);
        Running pickling = held("pickling", Duration.ofMinutes(2), 1, 5);
        Running overrun = held("overrun", Duration.ofMinutes(9), 1, 5);
        Running hurried = gap("hurried", Duration.ofSeconds(10), 30);
        Running rinsing = gap("rinsing", Duration.ofSeconds(10), 60);
        Running missed = gap("missed", Duration.ofHours(1), 30);
        assertEquals(List.of(overrun, hurried, rinsing, pickling, soaking),
                Stream.of(dried, soaking, rinsing, missed, pickling, overrun, hurried)
                        .sorted(Running.byUrgency(NOW)).limit(5).toList());
    }

    @Test
    void two_procedures_in_one_basket_are_one_clock() {
        tube.until(NextAction.Holding.class::isInstance);
        List<Running> running = new RunningLoads(LedLot.VOCABULARY, ZoneOffset.UTC, tube.now())
                .of(List.of(tube.card()), ME, List.of());
        Running.Held held = assertInstanceOf(Running.Held.class, running.getFirst().clock());
        assertTrue(held.words().endsWith(" · Alkaline degrease"));
        assertEquals("S-1 · T-1042 · 4 pieces", running.getFirst().about());
        assertTrue(held.atMinimum().startsWith("Lift the basket out."));
        assertEquals(List.of(), new RunningLoads(LedLot.VOCABULARY, ZoneOffset.UTC, tube.now())
                .of(List.of(tube.card()), ME, List.of(tube.card().id())));
    }

    private static Running held(String label, Duration since, int minimum, Integer maximum) {
        return new Running(label, "", new Running.Held(label, new Hold(Duration.ofMinutes(minimum),
                Optional.ofNullable(maximum).map(Duration::ofMinutes)), NOW.plus(since.negated()), "", ""), ME);
    }

    private static Running gap(String label, Duration since, int seconds) {
        return new Running(label, "", new Running.Hurried(
                label, new Gap(Duration.ofSeconds(seconds), "dries"), NOW.plus(since.negated())), ME);
    }
}
