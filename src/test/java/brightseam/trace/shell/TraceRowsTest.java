package brightseam.trace.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.TravellerId;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.shell.TestLedger;
import brightseam.trace.Reach;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.trace.TouchLog;
import brightseam.trace.TraceQuestion;
import brightseam.trace.Whereabouts;
import brightseam.traveller.Stories;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.TravellerEvent.*;
import brightseam.traveller.shell.TravellerStreams;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The tables against random shifts, and against what a plain walk through one piece's own history finds. */
class TraceRowsTest {

    private static final int SHIFTS = 6;

    @Test
    void the_tables_say_of_every_traveller_and_every_piece_what_their_histories_say_and_a_rebuild_says_the_same() {
        Set<Class<?>> happened = new HashSet<>();
        for (long seed = 1; seed <= SHIFTS; seed++) {
            Map<String, List<TravellerEvent>> records = Stories.shift(seed);
            records.values().forEach(record -> record.forEach(event -> happened.add(event.getClass())));
            try (TestLedger shop = TestLedger.inMemory(TraceRows::new)) {
                store(shop, records);
                Traces traces = new Traces(shop.jdbc());
                records.forEach((label, record) -> compare(traces, new TravellerId(label), record));
                assertThat(records.keySet().stream().flatMap(label -> under(traces, label).stream()))
                        .as("every piece is under one traveller").containsExactlyInAnyOrder(1, 2, 3, 4, 5);
                assertThat(shop.rebuild().compare()).isEmpty();
            }
        }
        assertThat(happened).contains(SetApart.class, PiecesScrapped.class, ReturnedToStep.class, ContactMade.class,
                JointWelded.class, LockPassed.class);
    }

    private static void compare(Traces traces, TravellerId id, List<TravellerEvent> record) {
        assertThat(traces.touches(id)).containsExactlyInAnyOrderElementsOf(TouchLog.of(record).touches());
        assertThat(traces.find(id)).contains(Whereabouts.of(Traveller.fold(record).orElseThrow()));
        under(traces, id.value()).forEach(piece ->
                assertThat(told(traces.touches(id, piece))).isEqualTo(walked(record, piece)));
    }

    private static List<Integer> under(Traces traces, String label) {
        return traces.touches(new TravellerId(label)).stream()
                .filter(touch -> touch.thing().kind() == ThingKind.HEAT)
                .flatMap(touch -> touch.pieces().stream()).toList();
    }

    @Test
    void from_a_bad_cylinder_the_way_leads_to_joints_and_pieces_and_back() {
        List<TravellerEvent> record = Stories.inTheChamber();
        try (TestLedger shop = TestLedger.inMemory(TraceRows::new)) {
            store(shop, Map.of("T-1042", record));
            Traces traces = new Traces(shop.jdbc());
            Thing cylinder = new Thing(ThingKind.ARGON, "A-0031", "AR 90-117");
            assertThat(traces.lots(ThingKind.ARGON, "A-0031")).containsExactly(cylinder);
            Reach reach = traces.reach(TraceQuestion.of(cylinder));
            assertThat(reach.counts().pieces()).isEqualTo(4);
            List<Touch> touches = traces.touches(TraceQuestion.of(cylinder), List.of(new TravellerId("T-1042")));
            assertThat(touches).extracting(touch -> touch.joint().orElseThrow().toString())
                    .containsExactly("K-07.J03", "K-07.J04", "K-07.J05", "K-07.J05");
            assertThat(traces.touches(new TravellerId("T-1042"), 3)).filteredOn(touch -> touch.joint().isPresent())
                    .extracting(touch -> touch.thing().kind())
                    .containsExactlyInAnyOrder(ThingKind.FILLER, ThingKind.ARGON, ThingKind.GAUGE);
            assertThat(shop.rebuild().compare()).isEmpty();
        }
    }

    @Test
    void from_every_thing_the_way_leads_to_exactly_the_travellers_whose_pieces_it_touched() {
        Map<String, List<TravellerEvent>> records = Stories.shift(7);
        try (TestLedger shop = TestLedger.inMemory(TraceRows::new)) {
            store(shop, records);
            Traces traces = new Traces(shop.jdbc());
            List<Touch> all = records.values().stream().flatMap(record -> TouchLog.of(record).touches().stream())
                    .toList();
            for (Thing thing : all.stream().map(Touch::thing).collect(Collectors.toSet())) {
                Reach reach = traces.reach(TraceQuestion.of(thing));
                List<Touch> its = all.stream().filter(touch -> touch.thing().equals(thing)).toList();
                assertThat(reach.counts().contacts()).isEqualTo(its.size());
                assertThat(reach.travellers()).extracting(one -> one.now().traveller())
                        .containsExactlyInAnyOrderElementsOf(its.stream().map(Touch::traveller).distinct().toList());
                assertThat(reach.counts().pieces()).isEqualTo((int) its.stream().flatMap(touch -> touch.pieces()
                        .stream().map(piece -> touch.traveller() + "/" + piece)).distinct().count());
                assertThat(traces.touches(TraceQuestion.of(thing), its.stream().map(Touch::traveller).toList()))
                        .containsExactlyInAnyOrderElementsOf(its);
            }
        }
    }

    private static void store(TestLedger shop, Map<String, List<TravellerEvent>> records) {
        records.forEach((label, record) -> {
            for (int i = 0; i < record.size(); i++) {
                Appended stored = shop.ledger().append(List.of(new Append(TravellerStreams.KIND.stream(label), i,
                        TravellerStreams.KIND.write(List.of(record.get(i))))));
                assertThat(stored).isInstanceOf(Appended.Stored.class);
            }
        });
    }

    private static Set<String> told(List<Touch> touches) {
        return touches.stream().filter(touch -> touch.thing().kind() != ThingKind.PERSON)
                .filter(touch -> touch.joint().isEmpty())
                .map(touch -> touch.thing().kind() + " " + touch.thing().label() + " " + touch.from())
                .collect(Collectors.toSet());
    }

    /** What touched {@code piece}, by walking through its own history with nothing in mind but that piece. */
    private static Set<String> walked(List<TravellerEvent> record, int piece) {
        return flat(record).stream().takeWhile(event -> !(event instanceof PiecesScrapped gone
                && gone.pieces().contains(piece))).flatMap(event -> switch (event) {
                    case Released e -> List.of("HEAT " + e.heat() + " " + e.at().wall(),
                            "KIT " + e.kit() + " " + e.at().wall()).stream();
                    case PutInBin e -> List.of("BIN " + e.bin() + " " + e.at().wall()).stream();
                    case StepStarted e -> e.station().stream()
                            .map(station -> "STATION " + station + " " + e.at().wall());
                    case LockPassed e -> List.of(
                            "STATION " + e.lock().lock() + " " + e.lock().begunAt().wall()).stream();
                    case ContactMade e -> e.contacts().stream()
                            .map(contact -> contact.kind() + " " + contact.label() + " " + e.at().wall());
                    default -> List.<String>of().stream();
                }).collect(Collectors.toSet());
    }

    private static List<TravellerEvent> flat(List<TravellerEvent> record) {
        return record.stream().flatMap(event -> event instanceof SetApart first
                ? flat(first.history()).stream() : List.of(event).stream()).toList();
    }
}
