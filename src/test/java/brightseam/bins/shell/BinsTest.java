package brightseam.bins.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.bins.Bin;
import brightseam.bins.BinCommand;
import brightseam.bins.BinEvent;
import brightseam.bins.BinRefusal;
import brightseam.bins.Capacity;
import brightseam.bins.Soiling;
import brightseam.kernel.BinId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Appended;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.procedure.BinClass;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class BinsTest {

    private static final BinId BASKET = new BinId("B-0101");
    private static final BinId CLEAN = new BinId("B-0142");
    private static final TravellerId TUBE = new TravellerId("T-1042");
    private static final TravellerId NODE = new TravellerId("T-1043");

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = Bins.binProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final Bins bins = new Bins(ledger, jdbc);

    @Test
    void a_move_from_bin_to_bin_is_one_append() {
        twoBins();
        store(bins.prepare(put(BASKET, TUBE)));
        assertEquals(Optional.of(BASKET), bins.whereIs(TUBE));
        Prepared<List<Bin>> move = bins.prepare(List.of(take(BASKET, TUBE), put(CLEAN, TUBE)));
        assertEquals(Optional.of(BASKET), bins.whereIs(TUBE), "preparing stores nothing");
        store(move);
        assertEquals(Optional.of(CLEAN), bins.whereIs(TUBE));
        assertEquals(Set.of(), bins.inside(BASKET));
        assertEquals(Set.of(TUBE), bins.inside(CLEAN));
    }

    @Test
    void a_move_is_refused_for_the_rules_of_both_bins() {
        twoBins();
        done(new BinCommand.CloseBin(CLEAN, ORIGIN));
        Prepared<List<Bin>> move = bins.prepare(List.of(take(BASKET, TUBE), put(CLEAN, TUBE)));
        assertEquals(
                List.of(
                        new BinRefusal.NotInside(BASKET, TUBE),
                        new BinRefusal.BinClosed(CLEAN, BinClass.CLEAN_BIN)),
                move.broken());
    }

    @Test
    void a_load_goes_into_its_basket_at_once() {
        twoBins();
        Prepared<List<Bin>> load = bins.prepare(List.of(put(BASKET, TUBE), put(BASKET, NODE)));
        Prepared.Ready<List<Bin>> ready = assertInstanceOf(Prepared.Ready.class, load);
        assertEquals(1, ready.appends().size());
        assertEquals(Set.of(TUBE, NODE), ready.result().getFirst().inside());
        assertEquals(
                List.of(new BinRefusal.AlreadyInside(BASKET, TUBE)),
                bins.prepare(List.of(put(BASKET, TUBE), put(BASKET, TUBE))).broken());
    }

    @Test
    void what_was_prepared_on_an_older_state_is_not_stored() {
        twoBins();
        Prepared<Bin> late = bins.prepare(put(BASKET, TUBE));
        store(bins.prepare(put(BASKET, NODE)));
        Prepared.Ready<Bin> ready = assertInstanceOf(Prepared.Ready.class, late);
        assertInstanceOf(Appended.Conflict.class, ledger.append(ready.appends()));
    }

    @Test
    void a_bin_is_found_with_its_version() {
        assertEquals(Optional.empty(), bins.find(CLEAN));
        twoBins();
        assertEquals(2, bins.find(CLEAN).map(Versioned::version).orElseThrow());
    }

    @Test
    void rows_are_the_folded_states_and_a_rebuild_gives_the_same_rows() {
        twoBins();
        done(new BinCommand.RegisterBin(new BinId("B-0009"), BinClass.SEALED_BAG, Optional.of(1), ORIGIN));
        store(bins.prepare(List.of(put(BASKET, TUBE), put(BASKET, NODE))));
        done(new BinCommand.SetCapacity(BASKET, new Capacity(Optional.of(4), Optional.of(60),
                Optional.of(new BigDecimal("1.20")), Optional.empty()), ORIGIN));
        store(bins.prepare(List.of(take(BASKET, TUBE), put(CLEAN, TUBE))));
        done(new BinCommand.CloseBin(CLEAN, ORIGIN));
        done(new BinCommand.OpenBin(CLEAN, false, ORIGIN));
        List<BinId> labels = List.of(new BinId("B-0009"), BASKET, CLEAN);
        assertEquals(
                labels.stream().map(label -> bins.find(label).orElseThrow().state()).toList(), bins.all());
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertEquals(rows, FreshDatabase.rows(jdbc, projection));
        assertFalse(rows.get("bin_content_row").isEmpty());
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("bin-events.txt", BinStreams.TYPES, BinStreams.KIND.codec(), List.of(
                new BinEvent.Registered(ORIGIN, CLEAN, BinClass.CLEAN_BIN, Optional.empty()),
                new BinEvent.Registered(ORIGIN, BASKET, BinClass.PROCESS_BASKET, Optional.of(6)),
                new BinEvent.PutIn(ORIGIN, CLEAN, TUBE, true),
                new BinEvent.TakenOut(ORIGIN, CLEAN, TUBE),
                new BinEvent.Closed(ORIGIN, CLEAN),
                new BinEvent.Opened(ORIGIN, CLEAN, false),
                new BinEvent.Soiled(ORIGIN, CLEAN, Soiling.OPENED_IN_DIRTY_PLACE, Optional.empty()),
                new BinEvent.Soiled(ORIGIN, CLEAN, Soiling.REPORTED, Optional.of("bare hand inside")),
                new BinEvent.Cleaned(ORIGIN, CLEAN),
                new BinEvent.Retired(ORIGIN, CLEAN),
                new BinEvent.CapacitySet(ORIGIN, BASKET, new Capacity(Optional.of(4), Optional.of(60),
                        Optional.of(new BigDecimal("1.20")), Optional.of(new BigDecimal("15")))),
                new BinEvent.CapacitySet(ORIGIN, BASKET, Capacity.ofTravellers(Optional.empty()))));
    }

    private void twoBins() {
        done(new BinCommand.RegisterBin(BASKET, BinClass.PROCESS_BASKET, Optional.empty(), ORIGIN));
        done(new BinCommand.RegisterBin(CLEAN, BinClass.CLEAN_BIN, Optional.empty(), ORIGIN));
        done(new BinCommand.DeclareCleaned(CLEAN, ORIGIN));
    }

    private void done(BinCommand command) {
        assertInstanceOf(Outcome.Done.class, bins.execute(command));
    }

    private void store(Prepared<?> prepared) {
        Prepared.Ready<?> ready = assertInstanceOf(Prepared.Ready.class, prepared);
        assertInstanceOf(Appended.Stored.class, ledger.append(ready.appends()));
    }

    private static BinCommand put(BinId bin, TravellerId traveller) {
        return new BinCommand.PutIn(bin, traveller, true, ORIGIN);
    }

    private static BinCommand take(BinId bin, TravellerId traveller) {
        return new BinCommand.TakeOut(bin, traveller, ORIGIN);
    }
}
