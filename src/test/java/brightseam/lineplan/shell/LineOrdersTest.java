package brightseam.lineplan.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.BadgeId;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.lineplan.Aim;
import brightseam.lineplan.LineOrderEvent;
import brightseam.lineplan.LineOrders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the lead says about the line, and the shop's own layout of it. */
class LineOrdersTest {

    private static final BadgeId ADA = new BadgeId("P-0101");
    private static final BadgeId BEN = new BadgeId("P-0102");

    @TempDir
    Path folder;

    @Test
    void the_last_word_counts() {
        LineOrders hands = LineOrders.evolve(Optional.empty(), new LineOrderEvent.HandsSet(ORIGIN, List.of(BEN, ADA)));
        LineOrders both = LineOrders.evolve(Optional.of(hands), new LineOrderEvent.AimSet(ORIGIN, Aim.SOONEST));
        assertEquals(new LineOrders(Aim.SOONEST, List.of(ADA, BEN)), both);
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("line-order-events.txt", LineOrderStreams.TYPES, LineOrderStreams.KIND.codec(), List.of(
                new LineOrderEvent.AimSet(ORIGIN, Aim.STILL_TODAY),
                new LineOrderEvent.HandsSet(ORIGIN, List.of(ADA, BEN))));
    }

    @Test
    void a_shop_has_a_layout_of_its_own() throws IOException {
        Path own = folder.resolve("line.yaml");
        String text = Files.readString(Path.of("shared/line.yaml"));
        Files.writeString(own, text.replace("seconds_per_metre: 1.2", "seconds_per_metre: 2"));
        assertEquals(2, LayoutFile.read(own.toString()).secondsPerMetre());
        assertEquals(1.2, LayoutFile.read("").secondsPerMetre());
        Files.writeString(own, text.replace("baskets: 2", "baskets: none"));
        String told = assertThrows(IllegalStateException.class, () -> LayoutFile.read(own.toString())).getMessage();
        assertTrue(told.contains("line.yaml") && told.contains("\"none\""), told);
        assertThrows(IllegalStateException.class, () -> LayoutFile.read(folder.resolve("none.yaml").toString()));
    }
}
