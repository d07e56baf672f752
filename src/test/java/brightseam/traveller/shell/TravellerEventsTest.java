package brightseam.traveller.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.traveller.TravellerEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;

/**
 * The written form of every event, kept for ever beside this test. A line is never edited; a new form gets a new type
 * name and a new line. {@code -Dapprove=true} rewrites the file, for adding lines.
 */
class TravellerEventsTest {

    private static final Path APPROVED = Path.of("src/test/resources/approved/traveller-events.txt");

    @Test
    void every_event_has_a_sample() {
        Set<Class<?>> sampled = EventSamples.all().stream().map(Object::getClass).collect(Collectors.toSet());
        assertEquals(Set.of(TravellerEvent.class.getPermittedSubclasses()), sampled);
    }

    @Test
    void events_are_written_as_approved() throws IOException {
        List<String> written = EventSamples.all().stream().map(TravellerEventsTest::line).toList();
        if (Boolean.getBoolean("approve")) {
            List<String> more = new ArrayList<>(Files.readAllLines(APPROVED));
            written.stream().filter(line -> !more.contains(line)).forEach(more::add);
            Files.write(APPROVED, more);
        }
        assertEquals(written.stream().sorted().toList(), approved(false).stream().sorted().toList());
    }

    @Test
    void approved_bytes_are_read_back_as_the_same_events() throws IOException {
        assertEquals(Set.copyOf(EventSamples.all()), approved(false).stream().map(TravellerEventsTest::event)
                .collect(Collectors.toSet()));
    }

    @Test
    void first_forms_whose_marks_are_bound_to_nothing_stay_readable() throws IOException {
        List<TravellerEvent> read = approved(true).stream().map(TravellerEventsTest::event).toList();
        assertEquals(EventSamples.firstForms(), read);
        assertTrue(read.size() > 8 && read.stream().map(TravellerEvent::mark).flatMap(Optional::stream)
                .allMatch(mark -> mark.content().isEmpty()));
    }

    /** The approved lines of forms that are not written any more, or of those that are. */
    private static List<String> approved(boolean earlier) throws IOException {
        Set<String> current = EventSamples.all().stream().map(event -> TravellerEvents.codec().write(event).type())
                .collect(Collectors.toSet());
        return Files.readAllLines(APPROVED).stream()
                .filter(line -> earlier != current.contains(line.substring(0, line.indexOf(' ')))).toList();
    }

    @Test
    void nested_events_carry_their_type_name_at_every_depth() {
        String json = TravellerEvents.codec().write(EventSamples.grandchild()).json();
        assertEquals(List.of(1, 1, 1), List.of(count(json, "\"type\":\"released.1\""),
                count(json, "\"type\":\"set-apart.2\""), count(json, "\"type\":\"bin-closed.1\"")));
        assertTrue(!json.startsWith("{\"event\""), "the outermost event is bare");
    }

    @Test
    void an_unknown_type_is_refused_outside_and_inside() {
        assertThrows(IllegalArgumentException.class, () -> event("signed-by-nobody.1 {}"));
        String nested = line(EventSamples.grandchild()).replace("\"released.1\"", "\"signed-by-nobody.1\"");
        assertThrows(RuntimeException.class, () -> event(nested));
    }

    @Test
    void a_field_that_the_table_does_not_know_is_refused() {
        String more = line(EventSamples.all().getLast()).replaceFirst("\\{", "{\"more\":1,");
        assertThrows(RuntimeException.class, () -> event(more));
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    private static String line(TravellerEvent event) {
        NewEvent written = TravellerEvents.codec().write(event);
        try {
            return written.type() + " " + new JsonCanonicalizer(written.json()).getEncodedString();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static TravellerEvent event(String line) {
        String[] parts = line.split(" ", 2);
        return TravellerEvents.codec().read(
                new Entry(1, new StreamName("traveller/T-1042"), 1, parts[0], parts[1], "", ""));
    }
}
