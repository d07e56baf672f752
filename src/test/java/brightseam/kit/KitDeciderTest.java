package brightseam.kit;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import brightseam.kernel.Decision;
import brightseam.kernel.KitId;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class KitDeciderTest {

    private static final KitId KIT = new KitId("K-07");
    private static final Optional<Instant> DUE = Optional.of(Instant.parse("2031-03-06T05:30:00Z"));
    private static final KitEvent OPENED = new KitEvent.Opened(ORIGIN, KIT, "Lander frame 3", DUE);
    private static final KitEvent CLOSED = new KitEvent.Closed(ORIGIN, KIT);
    private static final KitCommand OPEN = new KitCommand.OpenKit(KIT, "Lander frame 3", DUE, ORIGIN);
    private static final KitCommand CLOSE = new KitCommand.CloseKit(KIT, ORIGIN);

    @Test
    void a_kit_is_opened_once() {
        accepts(List.of(), OPEN, OPENED);
        refuses(List.of(OPENED), OPEN, new KitRefusal.KitAlreadyOpened(KIT, "Lander frame 3"));
    }

    @Test
    void an_unknown_kit_takes_no_lines() {
        refuses(List.of(), add(1), new KitRefusal.KitUnknown(KIT));
        refuses(List.of(), CLOSE, new KitRefusal.KitUnknown(KIT));
    }

    @Test
    void lines_are_added_and_kept_in_order() {
        accepts(List.of(OPENED), add(2, 1), added(2, 1));
        Kit kit = fold(List.of(OPENED, added(2, 1), added(3))).orElseThrow();
        assertEquals(List.of(1, 2, 3), kit.lines().stream().map(KitLine::lineNumber).toList());
        assertEquals(4, kit.nextLineNumber());
    }

    @Test
    void a_line_number_is_given_once() {
        refuses(List.of(OPENED, added(1, 2)), add(2, 3, 3), new KitRefusal.LineNumbersTaken(KIT, List.of(2, 3)));
    }

    @Test
    void what_the_session_needs_is_set_as_a_whole_and_names_each_type_once() {
        SetNeed gloves = new SetNeed("white-cotton", "White cotton gloves", 2);
        SetNeed tray = new SetNeed("stainless-lock-tray", "Tray", 1);
        KitEvent set = new KitEvent.NeedsSet(ORIGIN, KIT, List.of(gloves, tray));
        accepts(List.of(OPENED), needs(gloves, tray), set);
        accepts(List.of(OPENED, set), needs(gloves, tray));
        accepts(List.of(OPENED, set), needs(), new KitEvent.NeedsSet(ORIGIN, KIT, List.of()));
        refuses(List.of(OPENED), needs(gloves, tray, gloves), new KitRefusal.NeedTwice(KIT, List.of("white-cotton")));
        refuses(List.of(OPENED, CLOSED), needs(tray), new KitRefusal.KitClosed(KIT));
        assertEquals(Optional.empty(), fold(List.of(OPENED)).orElseThrow().needs());
        assertEquals(Optional.of(List.of(gloves, tray)), fold(List.of(OPENED, set)).orElseThrow().needs());
    }

    private static KitCommand needs(SetNeed... needs) {
        return new KitCommand.SetNeeds(KIT, List.of(needs), ORIGIN);
    }

    @Test
    void a_kit_has_at_most_as_many_lines_as_a_parts_list() {
        KitEvent full = added(IntStream.rangeClosed(1, PartsList.LINES_MAX).toArray());
        refuses(List.of(OPENED, full), add(900), new KitRefusal.TooManyLines(KIT, 201, 200));
    }

    @Test
    void a_session_is_moved_or_left_as_it_is() {
        KitCommand unset = new KitCommand.ChangeSessionDue(KIT, Optional.empty(), ORIGIN);
        accepts(List.of(OPENED), unset, new KitEvent.SessionDueChanged(ORIGIN, KIT, Optional.empty()));
        accepts(List.of(OPENED), new KitCommand.ChangeSessionDue(KIT, DUE, ORIGIN));
    }

    @Test
    void a_closed_kit_no_longer_changes() {
        accepts(List.of(OPENED), CLOSE, CLOSED);
        refuses(List.of(OPENED, CLOSED), CLOSE, new KitRefusal.KitClosed(KIT));
        refuses(
                List.of(OPENED, added(1), CLOSED),
                add(1),
                new KitRefusal.KitClosed(KIT),
                new KitRefusal.LineNumbersTaken(KIT, List.of(1)));
    }

    @Test
    void a_typed_line_is_checked_like_a_listed_one() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new KitLine(1, "LF-100-01", "=1+1", "A", 4, "TUBE", Optional.empty()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new KitLine(1, "LF-100-01", "Leg", "A", 0, "TUBE", Optional.empty()));
    }

    private static KitLine line(int number) {
        return new KitLine(number, "LF-100-01", "Leg, upper tube", "B", 4, "TUBE", Optional.empty());
    }

    private static KitCommand add(int... numbers) {
        return new KitCommand.AddLines(
                KIT, IntStream.of(numbers).mapToObj(KitDeciderTest::line).toList(), ORIGIN);
    }

    private static KitEvent added(int... numbers) {
        return new KitEvent.LinesAdded(
                ORIGIN, KIT, IntStream.of(numbers).mapToObj(KitDeciderTest::line).toList());
    }

    private static void accepts(List<KitEvent> given, KitCommand when, KitEvent... then) {
        assertEquals(Decision.<KitEvent>accepted(List.of(then)), KitDecider.decide(fold(given), when));
    }

    private static void refuses(List<KitEvent> given, KitCommand when, KitRefusal... then) {
        assertEquals(Decision.<KitEvent>refused(List.of(then)), KitDecider.decide(fold(given), when));
    }

    private static Optional<Kit> fold(List<KitEvent> events) {
        Optional<Kit> kit = Optional.empty();
        for (KitEvent event : events) {
            kit = Optional.of(Kit.evolve(kit, event));
        }
        return kit;
    }
}
