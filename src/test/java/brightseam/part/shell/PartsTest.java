package brightseam.part.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brightseam.bath.Bore;
import brightseam.bath.Shape;
import brightseam.kernel.PartNumber;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.part.Part;
import brightseam.part.PartCommand;
import brightseam.part.PartEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class PartsTest {

    private static final Shape.Tube TUBE = new Shape.Tube(38.1, 1.65, 900, Bore.CLOSED);
    private static final Shape.Bar BAR = new Shape.Bar(1.6, 914);
    private static final Shape.Plate PLATE = new Shape.Plate(120, 60, 3.2);
    private static final Shape.Fitting FITTING = new Shape.Fitting(210, 64, 128);

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = Parts.partProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final Parts parts = new Parts(ledger, jdbc);

    @Test
    void rows_are_the_folded_states_and_a_rebuild_gives_the_same_rows() {
        give("LF-101", TUBE, Optional.empty());
        give("LF-190", BAR, Optional.of(8.1));
        give("LF-120", PLATE, Optional.empty());
        give("LF-110", PLATE, Optional.empty());
        give("LF-110", FITTING, Optional.of(560.5));
        assertThat(parts.all()).isEqualTo(Stream.of("LF-101", "LF-110", "LF-120", "LF-190")
                .map(number -> parts.find(number).orElseThrow()).toList());
        assertThat(parts.all()).extracting(Part::shape).containsExactly(TUBE, FITTING, PLATE, BAR);
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertThat(FreshDatabase.rows(jdbc, projection)).isEqualTo(rows);
    }

    @Test
    void a_lot_is_measured_by_its_part_and_an_unknown_part_is_not_guessed() {
        give("LF-110", FITTING, Optional.empty());
        give("LF-120", PLATE, Optional.of(104.0));
        assertThat(parts.areaSquareMetres("LF-110", 5).orElseThrow()).isCloseTo(0.137, within(1e-9));
        assertThat(parts.wettedArea("LF-110", 5).orElseThrow().insideSquareMetres()).isCloseTo(0.032, within(1e-9));
        assertThat(parts.massKilograms("LF-110", 5, "5").orElseThrow()).isCloseTo(5 * 0.128 * 4.43, within(1e-9));
        assertThat(parts.massKilograms("LF-110", 5, "unheard of")).isEmpty();
        assertThat(parts.massKilograms("LF-120", 2, "unheard of")).contains(0.208);
        assertThat(parts.areaSquareMetres("LF-999", 5)).isEmpty();
        assertThat(parts.areaSquareMetres("no number at all", 5)).isEmpty();
    }

    @Test
    void every_event_is_written_as_approved() {
        PartNumber part = new PartNumber("LF-101");
        ApprovedEvents.check("part-events.txt", PartStreams.TYPES, PartStreams.KIND.codec(), List.of(
                new PartEvent.TubeGiven(ORIGIN, part, TUBE, Optional.empty()),
                new PartEvent.BarGiven(ORIGIN, part, BAR, Optional.of(8.1)),
                new PartEvent.PlateGiven(ORIGIN, part, PLATE, Optional.empty()),
                new PartEvent.FittingGiven(ORIGIN, part, FITTING, Optional.of(560.5))));
    }

    private void give(String number, Shape shape, Optional<Double> weighedGrams) {
        assertThat(parts.execute(new PartCommand.GiveShape(new PartNumber(number), shape, weighedGrams, ORIGIN)))
                .isInstanceOf(Outcome.Done.class);
    }
}
