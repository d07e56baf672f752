package brightseam.device.shell;

import brightseam.device.Series;
import brightseam.device.SeriesBlock;
import brightseam.device.SeriesBuilder;
import brightseam.device.SeriesSpan;
import brightseam.kernel.SupplyId;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** The tables {@code series_block}, {@code series_span} and {@code series_tail}. */
final class SeriesRows {

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final TransactionTemplate snapshot;

    SeriesRows(JdbcClient jdbc, PlatformTransactionManager transactions) {
        this.jdbc = jdbc;
        this.transaction = new TransactionTemplate(transactions);
        this.snapshot = new TransactionTemplate(transactions);
        snapshot.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
    }

    /** A block without its readings. */
    record Block(long number, SeriesSpan span) {}

    /**
     * Where a meter's rows end.
     *
     * @param blocks the number of its last block; 0 where there is none
     * @param tails the number of its last row in the tail; 0 where there never was one
     * @param open the readings in the tail
     * @param recent the same, or the readings of the last block where there are none
     */
    record End(long blocks, long tails, Series open, Series recent) {}

    /** Read as of one moment: another node may be making blocks out of the tail. */
    End end(SupplyId meter) {
        return snapshot.execute(status -> endNow(meter));
    }

    private End endNow(SupplyId meter) {
        long blocks = number("select coalesce(max(number), 0) from series_span where meter_id = :meter", meter);
        long through = number("select coalesce(max(through), 0) from series_span where meter_id = :meter", meter);
        long last = number("select coalesce(max(number), 0) from series_tail where meter_id = :meter", meter);
        SeriesBuilder open = new SeriesBuilder(0);
        jdbc.sql("select bytes from series_tail where meter_id = :meter and number > :through order by number")
                .param("meter", meter.value()).param("through", through)
                .query((row, number) -> SeriesBlock.unpack(row.getBytes(1))).list().forEach(open::add);
        SeriesBuilder recent = new SeriesBuilder(0).add(open.build());
        if (recent.size() == 0 && blocks > 0) {
            read(meter, new long[] {blocks}, recent::add);
        }
        return new End(blocks, Math.max(through, last), open.build(), recent.build());
    }

    /** Adds {@code readings} to the tail as row {@code number}. */
    void addTail(SupplyId meter, long number, Series readings) {
        jdbc.sql("insert into series_tail (meter_id, number, bytes) values (:meter, :number, :bytes)")
                .param("meter", meter.value()).param("number", number).param("bytes", SeriesBlock.pack(readings))
                .update();
    }

    /** Makes {@code pieces} blocks from {@code number} on, in the place of the tail's rows up to {@code through}. */
    void addBlocks(SupplyId meter, long number, List<Series> pieces, long through) {
        List<byte[]> packed = pieces.stream().map(SeriesBlock::pack).toList();
        transaction.executeWithoutResult(status -> {
            for (int i = 0; i < pieces.size(); i++) {
                addBlock(meter, number + i, packed.get(i));
                addSpan(meter, new Block(number + i, SeriesSpan.of(pieces.get(i))), through);
            }
            jdbc.sql("delete from series_tail where meter_id = :meter and number <= :through")
                    .param("meter", meter.value()).param("through", through).update();
        });
    }

    /** The blocks up to {@code last} that reach into a stretch, in order of where they begin. */
    List<Block> blocks(SupplyId meter, long fromMillis, long toMillis, long last) {
        return jdbc.sql("""
                        select number, from_millis, to_millis, points, first_value, last_value, low, low_at, high,
                            high_at, flags
                        from series_span
                        where meter_id = :meter and from_millis >= :earliest and from_millis <= :to
                            and to_millis >= :from and number <= :last
                        order by from_millis, number
                        """)
                .param("meter", meter.value()).param("earliest", fromMillis - SeriesSpan.MILLIS_MAX)
                .param("from", fromMillis).param("to", toMillis).param("last", last)
                .query(SeriesRows::block).list();
    }

    /** Hands the readings of {@code blocks} over, block by block, in order of their numbers. */
    void read(SupplyId meter, List<Block> blocks, Consumer<Series> reader) {
        if (!blocks.isEmpty()) {
            read(meter, blocks.stream().mapToLong(Block::number).sorted().toArray(), reader);
        }
    }

    private void read(SupplyId meter, long[] numbers, Consumer<Series> reader) {
        jdbc.sql("""
                        select number, bytes from series_block
                        where meter_id = :meter and number >= :first and number <= :last order by number
                        """)
                .param("meter", meter.value()).param("first", numbers[0])
                .param("last", numbers[numbers.length - 1])
                .query(row -> {
                    if (Arrays.binarySearch(numbers, row.getLong(1)) >= 0) {
                        reader.accept(SeriesBlock.unpack(row.getBytes(2)));
                    }
                });
    }

    private void addBlock(SupplyId meter, long number, byte[] bytes) {
        jdbc.sql("insert into series_block (meter_id, number, bytes) values (:meter, :number, :bytes)")
                .param("meter", meter.value()).param("number", number).param("bytes", bytes).update();
    }

    private void addSpan(SupplyId meter, Block block, long through) {
        SeriesSpan span = block.span();
        jdbc.sql("""
                        insert into series_span (meter_id, from_millis, number, to_millis, points, first_value,
                            last_value, low, low_at, high, high_at, flags, through)
                        values (:meter, :from, :number, :to, :points, :first, :last, :low, :lowAt, :high, :highAt,
                            :flags, :through)
                        """)
                .param("meter", meter.value()).param("number", block.number())
                .param("from", span.fromMillis()).param("to", span.toMillis()).param("points", span.points())
                .param("first", span.first()).param("last", span.last())
                .param("low", span.low()).param("lowAt", span.lowAt())
                .param("high", span.high()).param("highAt", span.highAt())
                .param("flags", span.flags()).param("through", through).update();
    }

    private long number(String sql, SupplyId meter) {
        return jdbc.sql(sql).param("meter", meter.value()).query(Long.class).single();
    }

    private static Block block(ResultSet row, int index) throws SQLException {
        return new Block(row.getLong("number"), new SeriesSpan(row.getLong("from_millis"), row.getLong("to_millis"),
                row.getInt("points"), row.getDouble("first_value"), row.getDouble("last_value"),
                row.getDouble("low"), row.getLong("low_at"), row.getDouble("high"), row.getLong("high_at"),
                row.getInt("flags")));
    }
}
