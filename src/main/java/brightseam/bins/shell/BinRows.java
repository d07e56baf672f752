package brightseam.bins.shell;

import brightseam.bins.Bin;
import brightseam.bins.Capacity;
import brightseam.bins.Fitness;
import brightseam.kernel.BinId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.shell.StateRows;
import brightseam.procedure.BinClass;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The tables {@code bin_row} and {@code bin_content_row}. */
final class BinRows implements StateRows<Bin> {

    private static final String SELECT = """
            select bin.bin_id, bin.bin_class, bin.capacity_count, bin.capacity_pieces, bin.capacity_square_metres,
                   bin.capacity_kilograms, bin.closed, bin.fitness, bin.retired, content.traveller_id
            from bin_row bin
            left join bin_content_row content on content.bin_id = bin.bin_id
            %s
            order by bin.bin_id, content.traveller_id
            """;

    private static final String INSERT = """
            insert into bin_row (bin_id, bin_class, capacity_count, capacity_pieces, capacity_square_metres,
                                 capacity_kilograms, closed, fitness, retired)
            values (:bin, :class, :lots, :pieces, :area, :mass, :closed, :fitness, :retired)
            """;

    private static final String UPDATE = """
            update bin_row
            set bin_class = :class, capacity_count = :lots, capacity_pieces = :pieces,
                capacity_square_metres = :area, capacity_kilograms = :mass, closed = :closed, fitness = :fitness,
                retired = :retired
            where bin_id = :bin
            """;

    private final JdbcClient jdbc;

    BinRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("bin_row", "bin_content_row");
    }

    @Override
    public Optional<Bin> find(String identity) {
        return read(jdbc.sql(SELECT.formatted("where bin.bin_id = :bin")).param("bin", identity)).stream()
                .findFirst();
    }

    List<Bin> all() {
        return read(jdbc.sql(SELECT.formatted("")));
    }

    /** The bin that {@code traveller} was last put into and is still in. */
    Optional<BinId> whereIs(TravellerId traveller) {
        return jdbc.sql("""
                        select bin_id
                        from bin_content_row
                        where traveller_id = :traveller
                        order by put_in_position desc
                        fetch first 1 row only
                        """)
                .param("traveller", traveller.value())
                .query(String.class)
                .optional()
                .map(BinId::new);
    }

    @Override
    public void put(Optional<Bin> before, Bin after, long position) {
        jdbc.sql(before.isPresent() ? UPDATE : INSERT)
                .param("bin", after.id().value())
                .param("class", after.binClass().name())
                .param("lots", after.capacity().travellers().orElse(null))
                .param("pieces", after.capacity().pieces().orElse(null))
                .param("area", after.capacity().areaSquareMetres().map(BigDecimal::toPlainString).orElse(null))
                .param("mass", after.capacity().massKilograms().map(BigDecimal::toPlainString).orElse(null))
                .param("closed", after.closed())
                .param("fitness", after.fitness().name())
                .param("retired", after.retired())
                .update();
        TreeSet<TravellerId> added = new TreeSet<>(after.inside());
        TreeSet<TravellerId> removed = new TreeSet<>();
        before.ifPresent(earlier -> {
            added.removeAll(earlier.inside());
            removed.addAll(earlier.inside());
            removed.removeAll(after.inside());
        });
        removed.forEach(traveller -> remove(after.id(), traveller));
        added.forEach(traveller -> add(after.id(), traveller, position));
    }

    private void add(BinId bin, TravellerId traveller, long position) {
        jdbc.sql("""
                        insert into bin_content_row (bin_id, traveller_id, put_in_position)
                        values (:bin, :traveller, :position)
                        """)
                .param("bin", bin.value())
                .param("traveller", traveller.value())
                .param("position", position)
                .update();
    }

    private void remove(BinId bin, TravellerId traveller) {
        jdbc.sql("""
                        delete from bin_content_row
                        where bin_id = :bin and traveller_id = :traveller
                        """)
                .param("bin", bin.value())
                .param("traveller", traveller.value())
                .update();
    }

    /** One row for each traveller inside, one for an empty bin; sorted, so that the rows of a bin are together. */
    private static List<Bin> read(JdbcClient.StatementSpec select) {
        return select.query(rows -> {
            List<Bin> bins = new ArrayList<>();
            while (rows.next()) {
                Bin bin = bin(rows);
                if (!bins.isEmpty() && bins.getLast().id().equals(bin.id())) {
                    TreeSet<TravellerId> inside = new TreeSet<>(bins.removeLast().inside());
                    inside.addAll(bin.inside());
                    bin = bin.withInside(inside);
                }
                bins.add(bin);
            }
            return bins;
        });
    }

    private static Capacity capacity(ResultSet row) throws SQLException {
        return new Capacity(
                Optional.ofNullable(row.getObject("capacity_count", Integer.class)),
                Optional.ofNullable(row.getObject("capacity_pieces", Integer.class)),
                Optional.ofNullable(row.getString("capacity_square_metres")).map(BigDecimal::new),
                Optional.ofNullable(row.getString("capacity_kilograms")).map(BigDecimal::new));
    }

    private static Bin bin(ResultSet row) throws SQLException {
        TreeSet<TravellerId> inside = new TreeSet<>();
        Optional.ofNullable(row.getString("traveller_id")).map(TravellerId::new).ifPresent(inside::add);
        return new Bin(
                new BinId(row.getString("bin_id")),
                BinClass.valueOf(row.getString("bin_class")),
                capacity(row),
                row.getBoolean("closed"),
                inside,
                Fitness.valueOf(row.getString("fitness")),
                row.getBoolean("retired"));
    }
}
