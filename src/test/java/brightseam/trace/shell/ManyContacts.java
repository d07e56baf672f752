package brightseam.trace.shell;

import brightseam.kernel.TravellerId;
import brightseam.trace.PieceNumbers;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.trace.TouchLog;
import brightseam.traveller.Stories;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import javax.sql.DataSource;

/**
 * Fills the tables of contacts with years of an invented shop, straight, without a ledger under them: what one closed
 * lot was really recorded to touch, again and again, a lot every twenty minutes; with bins, people and heats of the
 * shop's stock, a fill of every bath a week, gloves by the day and cloths, solvent and a gauge at the steps by hand.
 */
public final class ManyContacts {

    private static final Duration BETWEEN_LOTS = Duration.ofMinutes(20);
    private static final int LOTS_A_WEEK = 7 * 72;
    private static final int PEOPLE = 8;
    private static final int BASKETS = 40;
    private static final int ROWS_AT_ONCE = 5_000;

    private final Random random = new Random(41);
    private final List<Touch> one = TouchLog.of(Stories.closed()).touches();
    private long position;

    /** How much was made. */
    public record Made(int lots, long contacts) {

        /** A lot by its number from 0. */
        public TravellerId lot(int number) {
            return label(number);
        }
    }

    /** Stores at least {@code contacts} contacts. */
    public Made store(DataSource source, long contacts) throws SQLException {
        int lots = 0;
        long stored = 0;
        try (Connection connection = source.getConnection();
                PreparedStatement contact = connection.prepareStatement("""
                        insert into trace_contact (position, number, traveller_id, recorded_as, pieces, piece_count,
                            kind, label, lot, type, step_id, pass, from_millis, until_millis)
                        values (?, 0, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """);
                PreparedStatement lot = connection.prepareStatement("""
                        insert into trace_traveller (traveller_id, kit_id, heat_id, part_number, part_description,
                            drawing_revision, pieces, phase, quarantine, suspect, bin_position)
                        values (?, ?, ?, 'HDF-9000-01', 'Lot of the benchmark', 'B', '1-4', 'CLOSED', false, false, 0)
                        """)) {
            connection.setAutoCommit(false);
            while (stored < contacts) {
                lot(lot, lots);
                for (Touch touch : touches(lots)) {
                    contact(contact, touch);
                    stored++;
                }
                lots++;
                if (lots % (ROWS_AT_ONCE / 60) == 0 || stored >= contacts) {
                    lot.executeBatch();
                    contact.executeBatch();
                    connection.commit();
                }
            }
        }
        return new Made(lots, stored);
    }

    /** The thing of {@code kind} that touched the lot of {@code number} first. */
    public static Thing thing(Traces traces, ThingKind kind, TravellerId lot) {
        return traces.touches(lot).stream().map(Touch::thing).filter(thing -> thing.kind() == kind).findFirst()
                .orElseThrow();
    }

    private static TravellerId label(int number) {
        return new TravellerId("T-C" + (100_001 + number));
    }

    private static String kit(int number) {
        return "K-C" + number / 30;
    }

    private List<Touch> touches(int number) {
        Duration later = BETWEEN_LOTS.multipliedBy(number);
        IntFunction<String> person = step -> "P-1" + Math.floorMod(number / 24 + step / 6, PEOPLE);
        List<Touch> touches = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            Touch touch = one.get(i);
            Thing thing = switch (touch.thing().kind()) {
                case HEAT -> Thing.of(ThingKind.HEAT, "H-C" + number / 50);
                case KIT -> Thing.of(ThingKind.KIT, kit(number));
                case PERSON -> Thing.of(ThingKind.PERSON, person.apply(i));
                case BIN -> Thing.of(ThingKind.BIN, "B-" + random.nextInt(BASKETS));
                case STATION -> Thing.of(ThingKind.STATION, station(touch));
                default -> touch.thing();
            };
            touches.add(shifted(touch, number, later, thing));
            if (thing.kind() == ThingKind.STATION) {
                supplies(touch, number).forEach(supply -> touches.add(shifted(touch, number, later, supply)));
            }
        }
        return touches;
    }

    private static Stream<Thing> supplies(Touch at, int number) {
        Thing gloves = new Thing(ThingKind.GLOVES, "G-1" + number / 72, "L" + number / 720);
        if (at.pieces().isEmpty() || at.step().isEmpty()) {
            return Stream.empty();
        }
        return switch (at.step().get().value()) {
            case "degrease", "pickle", "acid-rinse" -> Stream.of(gloves, new Thing(ThingKind.BATH,
                    station(at), "" + number / LOTS_A_WEEK));
            default -> Stream.of(gloves, new Thing(ThingKind.WIPES, "G-2" + number / 36, "W" + number / 360),
                    new Thing(ThingKind.SOLVENT, "G-3" + number / 144, "A" + number / 1440),
                    new Thing(ThingKind.GAUGE, "G-4" + number % 3, "SN-" + number % 3));
        };
    }

    private static String station(Touch at) {
        return "S-" + at.step().orElseThrow().value().toUpperCase(Locale.ROOT);
    }

    private static Touch shifted(Touch touch, int number, Duration later, Thing thing) {
        return new Touch(label(number), label(number), touch.pieces(), thing, touch.type(), touch.step(), touch.pass(),
                touch.joint(), touch.from().plus(later), touch.until().map(until -> until.plus(later)));
    }

    private static void lot(PreparedStatement row, int number) throws SQLException {
        row.setString(1, label(number).value());
        row.setString(2, kit(number));
        row.setString(3, "H-C" + number / 50);
        row.addBatch();
    }

    private void contact(PreparedStatement row, Touch touch) throws SQLException {
        row.setLong(1, ++position);
        row.setString(2, touch.traveller().value());
        row.setString(3, touch.recordedAs().value());
        row.setString(4, PieceNumbers.write(touch.pieces()));
        row.setInt(5, touch.pieces().size());
        row.setString(6, touch.thing().kind().name());
        row.setString(7, touch.thing().label());
        row.setString(8, touch.thing().lot());
        row.setString(9, touch.type());
        row.setString(10, touch.step().map(step -> step.value()).orElse(""));
        row.setInt(11, touch.pass());
        row.setLong(12, touch.from().toEpochMilli());
        row.setObject(13, touch.until().map(Instant::toEpochMilli).orElse(null));
        row.addBatch();
    }
}
