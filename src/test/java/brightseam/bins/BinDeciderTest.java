package brightseam.bins;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BinDeciderTest {

    private static final BinId BIN = new BinId("B-0142");
    private static final TravellerId TUBE = new TravellerId("T-1042");
    private static final TravellerId NODE = new TravellerId("T-1043");

    private static final BinEvent SHOP_BIN = registered(BinClass.SHOP_BIN, Optional.empty());
    private static final BinEvent CLEAN_BIN = registered(BinClass.CLEAN_BIN, Optional.empty());
    private static final BinEvent BAG = registered(BinClass.SEALED_BAG, Optional.empty());
    private static final BinEvent TUBE_IN = new BinEvent.PutIn(ORIGIN, BIN, TUBE, true);
    private static final BinEvent CLEANED = new BinEvent.Cleaned(ORIGIN, BIN);
    private static final BinEvent CLOSED = new BinEvent.Closed(ORIGIN, BIN);
    private static final BinEvent OPENED = new BinEvent.Opened(ORIGIN, BIN, true);
    private static final BinEvent RETIRED = new BinEvent.Retired(ORIGIN, BIN);

    private static final BinCommand PUT_TUBE_IN = new BinCommand.PutIn(BIN, TUBE, true, ORIGIN);
    private static final BinCommand TAKE_TUBE_OUT = new BinCommand.TakeOut(BIN, TUBE, ORIGIN);
    private static final BinCommand CLOSE = new BinCommand.CloseBin(BIN, ORIGIN);
    private static final BinCommand OPEN = new BinCommand.OpenBin(BIN, true, ORIGIN);
    private static final BinCommand CLEAN = new BinCommand.DeclareCleaned(BIN, ORIGIN);
    private static final BinCommand RETIRE = new BinCommand.RetireBin(BIN, ORIGIN);

    @Test
    void a_new_label_is_registered() {
        accepts(given(), new BinCommand.RegisterBin(BIN, BinClass.SHOP_BIN, Optional.empty(), ORIGIN), SHOP_BIN);
    }

    @Test
    void a_label_is_registered_once() {
        refuses(
                given(SHOP_BIN, RETIRED),
                new BinCommand.RegisterBin(BIN, BinClass.CLEAN_BIN, Optional.empty(), ORIGIN),
                new BinRefusal.BinAlreadyRegistered(BIN, BinClass.SHOP_BIN));
    }

    @Test
    void nothing_can_be_done_with_an_unknown_bin() {
        for (BinCommand command : List.of(PUT_TUBE_IN, TAKE_TUBE_OUT, CLOSE, OPEN, CLEAN, RETIRE)) {
            refuses(given(), command, new BinRefusal.BinUnknown(BIN));
        }
    }

    @Test
    void a_shop_bin_takes_parts_of_any_state() {
        accepts(given(SHOP_BIN), PUT_TUBE_IN, TUBE_IN);
        accepts(
                given(SHOP_BIN),
                new BinCommand.PutIn(BIN, TUBE, false, ORIGIN),
                new BinEvent.PutIn(ORIGIN, BIN, TUBE, false));
    }

    @Test
    void a_clean_bin_is_cleaned_before_its_first_use() {
        refuses(given(CLEAN_BIN), PUT_TUBE_IN, new BinRefusal.BinNotCleaned(BIN));
        accepts(given(CLEAN_BIN), CLEAN, CLEANED);
        accepts(given(CLEAN_BIN, CLEANED), PUT_TUBE_IN, TUBE_IN);
    }

    @Test
    void uncleaned_parts_soil_a_clean_bin() {
        BinEvent in = new BinEvent.PutIn(ORIGIN, BIN, TUBE, false);
        BinEvent soiled = new BinEvent.Soiled(ORIGIN, BIN, Soiling.UNCLEANED_PARTS, Optional.empty());
        accepts(given(CLEAN_BIN, CLEANED), new BinCommand.PutIn(BIN, TUBE, false, ORIGIN), in, soiled);
        refuses(
                given(CLEAN_BIN, CLEANED, in, soiled),
                new BinCommand.PutIn(BIN, NODE, true, ORIGIN),
                new BinRefusal.BinNotCleaned(BIN));
    }

    @Test
    void a_clean_bin_opened_in_a_dirty_place_has_to_be_cleaned_empty_and_open() {
        BinEvent opened = new BinEvent.Opened(ORIGIN, BIN, false);
        BinEvent soiled = new BinEvent.Soiled(ORIGIN, BIN, Soiling.OPENED_IN_DIRTY_PLACE, Optional.empty());
        BinEvent out = new BinEvent.TakenOut(ORIGIN, BIN, TUBE);
        accepts(
                given(CLEAN_BIN, CLEANED, TUBE_IN, CLOSED),
                new BinCommand.OpenBin(BIN, false, ORIGIN),
                opened,
                soiled);
        List<BinEvent> full = given(CLEAN_BIN, CLEANED, TUBE_IN, CLOSED, opened, soiled);
        refuses(full, CLEAN, new BinRefusal.BinNotEmpty(BIN, List.of(TUBE)));
        accepts(given(CLEAN_BIN, CLEANED, TUBE_IN, CLOSED, opened, soiled, out), CLEAN, CLEANED);
    }

    @Test
    void a_reported_bin_is_soiled_even_when_closed_and_a_shop_bin_cannot_be() {
        BinCommand report = new BinCommand.ReportSoiled(BIN, "bare hand inside", ORIGIN);
        BinEvent soiled = new BinEvent.Soiled(ORIGIN, BIN, Soiling.REPORTED, Optional.of("bare hand inside"));
        accepts(given(CLEAN_BIN, CLEANED, TUBE_IN, CLOSED), report, soiled);
        accepts(given(SHOP_BIN), report);
    }

    @Test
    void nothing_goes_into_or_out_of_a_closed_bin() {
        BinRefusal closed = new BinRefusal.BinClosed(BIN, BinClass.CLEAN_BIN);
        List<BinEvent> given = given(CLEAN_BIN, CLEANED, TUBE_IN, CLOSED);
        refuses(given, new BinCommand.PutIn(BIN, NODE, true, ORIGIN), closed);
        refuses(given, TAKE_TUBE_OUT, closed);
        refuses(given, CLOSE, closed);
    }

    @Test
    void every_broken_rule_is_named() {
        refuses(
                given(CLEAN_BIN, CLEANED, TUBE_IN, CLOSED, new BinEvent.Soiled(
                        ORIGIN, BIN, Soiling.REPORTED, Optional.empty())),
                PUT_TUBE_IN,
                new BinRefusal.BinClosed(BIN, BinClass.CLEAN_BIN),
                new BinRefusal.BinNotCleaned(BIN),
                new BinRefusal.AlreadyInside(BIN, TUBE));
    }

    @Test
    void only_containers_with_a_lid_are_closed() {
        refuses(given(SHOP_BIN), CLOSE, new BinRefusal.NoLid(BIN, BinClass.SHOP_BIN));
        refuses(given(SHOP_BIN), OPEN, new BinRefusal.BinOpen(BIN));
        accepts(given(CLEAN_BIN, CLEANED), CLOSE, CLOSED);
        accepts(given(CLEAN_BIN, CLEANED, CLOSED), OPEN, OPENED);
    }

    @Test
    void a_bag_is_used_once() {
        List<BinEvent> cutOpen = given(BAG, TUBE_IN, CLOSED, OPENED);
        refuses(cutOpen, CLOSE, new BinRefusal.BagUsed(BIN));
        refuses(cutOpen, new BinCommand.PutIn(BIN, NODE, true, ORIGIN), new BinRefusal.BagUsed(BIN));
        refuses(cutOpen, CLEAN, new BinRefusal.BagNotCleanable(BIN), new BinRefusal.BinNotEmpty(BIN, List.of(TUBE)));
        accepts(cutOpen, TAKE_TUBE_OUT, new BinEvent.TakenOut(ORIGIN, BIN, TUBE));
    }

    @Test
    void a_traveller_is_inside_once_and_taken_out_once() {
        refuses(given(SHOP_BIN, TUBE_IN), PUT_TUBE_IN, new BinRefusal.AlreadyInside(BIN, TUBE));
        refuses(given(SHOP_BIN), TAKE_TUBE_OUT, new BinRefusal.NotInside(BIN, TUBE));
    }

    @Test
    void a_full_bin_takes_no_more() {
        BinEvent small = registered(BinClass.PROCESS_BASKET, Optional.of(1));
        refuses(given(small, TUBE_IN), new BinCommand.PutIn(BIN, NODE, false, ORIGIN), new BinRefusal.BinFull(BIN, 1));
    }

    @Test
    void only_an_empty_bin_retires_and_then_for_good() {
        refuses(given(SHOP_BIN, TUBE_IN), RETIRE, new BinRefusal.BinNotEmpty(BIN, List.of(TUBE)));
        accepts(given(SHOP_BIN), RETIRE, RETIRED);
        refuses(given(SHOP_BIN, RETIRED), RETIRE, new BinRefusal.BinRetired(BIN));
        refuses(given(SHOP_BIN, RETIRED), PUT_TUBE_IN, new BinRefusal.BinRetired(BIN));
    }

    private static BinEvent registered(BinClass binClass, Optional<Integer> capacity) {
        return new BinEvent.Registered(ORIGIN, BIN, binClass, capacity);
    }

    private static List<BinEvent> given(BinEvent... events) {
        return List.of(events);
    }

    private static void accepts(List<BinEvent> given, BinCommand when, BinEvent... then) {
        assertEquals(Decision.<BinEvent>accepted(List.of(then)), BinDecider.decide(fold(given), when));
    }

    private static void refuses(List<BinEvent> given, BinCommand when, Refusal... then) {
        assertEquals(Decision.<BinEvent>refused(List.of(then)), BinDecider.decide(fold(given), when));
    }

    private static Optional<Bin> fold(List<BinEvent> events) {
        Optional<Bin> bin = Optional.empty();
        for (BinEvent event : events) {
            bin = Optional.of(Bin.evolve(bin, event));
        }
        return bin;
    }
}
