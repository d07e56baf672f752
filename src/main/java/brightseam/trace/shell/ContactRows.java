package brightseam.trace.shell;

import brightseam.kernel.JointId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.trace.PieceNumbers;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.trace.TouchChange;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes the tables {@code trace_contact} and {@code trace_thing}. */
final class ContactRows {

    /** The columns that {@link #touch} reads. */
    static final String COLUMNS = """
            traveller_id, recorded_as, pieces, kind, label, lot, type, step_id, pass, joint, from_millis, until_millis
            """;

    private static final String INSERT = """
            insert into trace_contact (position, number, traveller_id, recorded_as, pieces, piece_count, kind, label,
                lot, type, step_id, pass, joint, from_millis, until_millis)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
            """;

    private static final String LASTS = """
            update trace_contact
            set until_millis = greatest(from_millis, coalesce(until_millis, from_millis), cast(? as bigint))
            where traveller_id = ?
            """;

    private final JdbcClient jdbc;

    ContactRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Brings the contacts of {@code traveller} up to date with what one event changed. */
    void apply(TravellerId traveller, List<TouchChange> changes, long position) {
        for (int number = 0; number < changes.size(); number++) {
            apply(traveller.value(), changes.get(number), position, number);
        }
    }

    static boolean beginsInBin(TouchChange change) {
        return change instanceof TouchChange.Began began && began.touch().thing().kind() == ThingKind.BIN;
    }

    static Touch touch(ResultSet row, int number) throws SQLException {
        String step = row.getString("step_id");
        return new Touch(new TravellerId(row.getString("traveller_id")), new TravellerId(row.getString("recorded_as")),
                PieceNumbers.read(row.getString("pieces")),
                new Thing(ThingKind.valueOf(row.getString("kind")), row.getString("label"), row.getString("lot")),
                row.getString("type"), step.isEmpty() ? Optional.empty() : Optional.of(new StepId(step)),
                row.getInt("pass"), Optional.of(row.getString("joint")).filter(joint -> !joint.isEmpty())
                        .map(JointId::parse), Instant.ofEpochMilli(row.getLong("from_millis")), until(row));
    }

    static Optional<Instant> until(ResultSet row) throws SQLException {
        long until = row.getLong("until_millis");
        return row.wasNull() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(until));
    }

    private void apply(String traveller, TouchChange change, long position, int number) {
        switch (change) {
            case TouchChange.Began began -> insert(began.touch(), position, number);
            case TouchChange.Handled handled -> handle(handled.touch(), position, number);
            case TouchChange.WasAtJoint was -> atJoint(was.touch(), position, number);
            case TouchChange.LeftBin left -> leaveBin(traveller, left.at());
            case TouchChange.LiftedOut out -> jdbc.sql(LASTS + """
                    and step_id = ? and pass = ? and kind in ('STATION', 'BATH', 'WATER') and until_millis is null
                    """).params(out.at().toEpochMilli(), traveller, out.step().value(), out.pass()).update();
            case TouchChange.StepOver over -> jdbc.sql(LASTS + """
                    and step_id = ? and pass = ? and kind not in ('BIN', 'PERSON') and until_millis is null
                    """).params(over.at().toEpochMilli(), traveller, over.step().value(), over.pass()).update();
            case TouchChange.Parted parted -> part(traveller, parted.pieces());
        }
    }

    private void insert(Touch touch, long position, int number) {
        jdbc.sql(INSERT).params(position, number, touch.traveller().value(), touch.recordedAs().value(),
                PieceNumbers.write(touch.pieces()), touch.pieces().size(), touch.thing().kind().name(),
                touch.thing().label(), touch.thing().lot(), touch.type(),
                touch.step().map(StepId::value).orElse(""), touch.pass(),
                touch.joint().map(JointId::toString).orElse(""), touch.from().toEpochMilli(),
                touch.until().map(Instant::toEpochMilli).orElse(null)).update();
        if (touch.thing().kind().hasLots()) {
            know(touch, position);
        }
    }

    private void know(Touch touch, long position) {
        Thing thing = touch.thing();
        int known = jdbc.sql("update trace_thing set type = ? where kind = ? and label = ? and lot = ?")
                .params(touch.type(), thing.kind().name(), thing.label(), thing.lot()).update();
        if (known == 0) {
            jdbc.sql("insert into trace_thing (kind, label, lot, type, first_position) values (?, ?, ?, ?, ?)")
                    .params(thing.kind().name(), thing.label(), thing.lot(), touch.type(), position).update();
        }
    }

    /** Where the contact began is known, so that a long record is not searched for it. */
    private void leaveBin(String traveller, Instant at) {
        long began = jdbc.sql("select bin_position from trace_traveller where traveller_id = ?").param(traveller)
                .query(Long.class).single();
        jdbc.sql(LASTS + "and position = ? and kind = 'BIN' and until_millis is null")
                .params(at.toEpochMilli(), traveller, began).update();
    }

    private void handle(Touch touch, long position, int number) {
        int known = jdbc.sql(LASTS + "and step_id = ? and pass = ? and kind = ? and label = ? and joint = ''").params(
                touch.from().toEpochMilli(), touch.traveller().value(), touch.step().map(StepId::value).orElse(""),
                touch.pass(), touch.thing().kind().name(), touch.thing().label()).update();
        if (known == 0) {
            insert(touch, position, number);
        }
    }

    private void atJoint(Touch was, long position, int number) {
        int known = jdbc.sql(LASTS + """
                and step_id = ? and pass = ? and kind = ? and label = ? and lot = ? and joint = ?
                    and (until_millis is null or from_millis = ?)
                """).params(was.until().orElseThrow().toEpochMilli(), was.traveller().value(),
                was.step().map(StepId::value).orElse(""), was.pass(), was.thing().kind().name(), was.thing().label(),
                was.thing().lot(), was.joint().map(JointId::toString).orElse(""),
                was.from().toEpochMilli()).update();
        if (known == 0) {
            insert(was, position, number);
        }
    }

    private void part(String traveller, List<Integer> gone) {
        List<String> texts = jdbc.sql("select distinct pieces from trace_contact where traveller_id = ?")
                .param(traveller).query(String.class).list();
        for (String text : texts) {
            List<Integer> left = PieceNumbers.read(text).stream().filter(piece -> !gone.contains(piece)).toList();
            jdbc.sql("""
                    update trace_contact set pieces = ?, piece_count = ? where traveller_id = ? and pieces = ?
                    """).params(PieceNumbers.write(left), left.size(), traveller, text).update();
        }
    }
}
