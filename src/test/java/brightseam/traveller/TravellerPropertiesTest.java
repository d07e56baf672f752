package brightseam.traveller;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.Refusal;
import brightseam.traveller.TravellerEvent.*;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What holds after any sequence of commands: random shifts, read by a checker that shares no code with the rules. */
class TravellerPropertiesTest {

    private static final int SHIFTS = 90;
    private static final int STEPS = 400;
    private static List<RandomShift> shifts;

    @BeforeAll
    static void work() {
        shifts = LongStream.range(0, SHIFTS).mapToObj(seed -> new RandomShift(seed).run(STEPS)).toList();
    }

    @Test
    void no_record_breaks_a_rule() {
        for (int seed = 0; seed < SHIFTS; seed++) {
            for (List<TravellerEvent> record : shifts.get(seed).records.values()) {
                assertEquals(List.of(), RecordCheck.findings(shifts.get(seed).procedure, record), "seed " + seed);
            }
        }
    }

    @Test
    void what_the_guide_points_at_is_never_refused() {
        for (int seed = 0; seed < SHIFTS; seed++) {
            assertEquals(List.of(), shifts.get(seed).guideRefused, "seed " + seed);
        }
    }

    @Test
    void folding_is_deterministic_and_the_same_from_any_prefix() {
        Random random = new Random(11);
        each((shift, label, record) -> {
            Traveller whole = Traveller.fold(record).orElseThrow();
            assertEquals(whole, Traveller.fold(record).orElseThrow());
            assertEquals(shift.states.get(label), whole);
            int cut = 1 + random.nextInt(record.size());
            assertEquals(whole, Traveller.fold(record.subList(0, cut)).orElseThrow()
                    .after(record.subList(cut, record.size())));
        });
    }

    @Test
    void no_piece_is_lost_or_doubled() {
        for (RandomShift shift : shifts) {
            List<Integer> found = new ArrayList<>();
            shift.records.forEach((label, record) -> {
                Set<Integer> left = RecordCheck.pieces(shift.procedure, record);
                assertEquals(new ArrayList<>(left), shift.states.get(label).pieces());
                found.addAll(left);
                record.stream().filter(PiecesScrapped.class::isInstance).map(PiecesScrapped.class::cast)
                        .forEach(scrapped -> found.addAll(scrapped.pieces()));
            });
            found.sort(null);
            assertEquals(Stream.iterate(1, i -> i + 1).limit(shift.quantity()).toList(), found);
        }
    }

    @Test
    void every_signature_reading_and_nonconformance_is_still_there() {
        each((shift, label, record) -> {
            List<TravellerEvent> all = flat(record);
            Traveller state = shift.states.get(label);
            List<StepRun> runs = Stream.concat(state.runs().values().stream(), state.superseded().stream()).toList();
            assertEquals(marks(all), new HashSet<>(runs.stream().filter(StepRun::isSigned)
                    .map(run -> List.of(run.step(), run.signature().orElseThrow(), run.signedAt().orElseThrow()))
                    .toList()));
            assertEquals(all.stream().filter(ReadingTaken.class::isInstance).count(),
                    runs.stream().mapToLong(run -> run.readings().size()).sum());
            assertEquals(all.stream().filter(NonconformanceOpened.class::isInstance)
                            .map(event -> ((NonconformanceOpened) event).number()).toList(),
                    state.nonconformances().stream().map(Nonconformance::number).toList());
        });
    }

    @Test
    void the_shifts_went_everywhere() {
        Set<Class<?>> events = new HashSet<>();
        Set<Class<?>> refusals = new HashSet<>();
        Set<Phase> phases = EnumSet.noneOf(Phase.class);
        shifts.forEach(shift -> {
            events.addAll(shift.events);
            refusals.addAll(shift.refusals);
            phases.addAll(shift.phases);
        });
        assertEquals(names(Set.of(TravellerEvent.class.getPermittedSubclasses())), names(events));
        assertEquals(EnumSet.allOf(Phase.class), phases);
        Set<Class<?>> never = new HashSet<>(everyRefusal());
        never.removeAll(refusals);
        assertEquals(Set.of(), names(never), "refusals that no shift met");
        int takenOut = shifts.stream().mapToInt(shift -> shift.takenOut).sum();
        assertTrue(takenOut > 30, "pieces taken out of their load: " + takenOut);
        int entries = shifts.stream().flatMap(shift -> shift.records.values().stream()).mapToInt(List::size).sum();
        assertTrue(entries > 6_000, "events: " + entries);
        long closed = shifts.stream().flatMap(shift -> shift.states.values().stream())
                .filter(state -> state.phase() == Phase.CLOSED).count();
        assertTrue(closed >= 20, "lots that reached the end: " + closed);
    }

    private static Set<String> names(Set<? extends Class<?>> types) {
        Set<String> names = new TreeSet<>();
        types.forEach(type -> names.add(type.getSimpleName()));
        return names;
    }

    private static Set<List<Object>> marks(List<TravellerEvent> events) {
        Set<List<Object>> marks = new HashSet<>();
        for (TravellerEvent event : events) {
            if (event instanceof StepSigned signed) {
                marks.add(List.of(signed.step(), signed.signature(), signed.at()));
            } else if (event instanceof StepStamped stamped) {
                marks.add(List.of(stamped.step(), stamped.signature(), stamped.at()));
            }
        }
        return marks;
    }

    private static List<TravellerEvent> flat(List<TravellerEvent> record) {
        return record.stream().flatMap(event -> event instanceof SetApart apart
                ? flat(apart.history()).stream() : Stream.of(event)).toList();
    }

    private interface Look {
        void at(RandomShift shift, String label, List<TravellerEvent> record);
    }

    private static void each(Look look) {
        shifts.forEach(shift -> shift.records.forEach((label, record) -> look.at(shift, label, record)));
    }

    /** Every kind of refusal that a traveller's command can meet. */
    private static Set<Class<? extends Refusal>> everyRefusal() {
        Set<Class<? extends Refusal>> all = new HashSet<>();
        for (Class<?> type : TravellerRefusal.class.getPermittedSubclasses()) {
            all.add(type.asSubclass(Refusal.class));
        }
        return all;
    }
}
