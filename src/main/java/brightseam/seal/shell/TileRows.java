package brightseam.seal.shell;

import brightseam.seal.Hash;
import brightseam.seal.Tile;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code ledger_tile}: the full tiles of the tree. */
public final class TileRows {

    private static final int AT_ONCE = 100;

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;

    /** Reads and writes by {@code batches}. */
    public TileRows(JdbcTemplate batches) {
        this.jdbc = JdbcClient.create(batches);
        this.batches = batches;
    }

    /** Inserts full tiles that are not there yet. */
    public void insert(List<Tile> tiles) {
        batches.batchUpdate("insert into ledger_tile (level, tile_index, root, hashes) values (?, ?, ?, ?)", tiles,
                AT_ONCE, (statement, tile) -> {
                    statement.setInt(1, tile.level());
                    statement.setLong(2, tile.index());
                    statement.setString(3, tile.root().hex());
                    statement.setBytes(4, bytes(tile.hashes()));
                });
    }

    Optional<List<Hash>> hashes(int level, long index) {
        return jdbc.sql("select hashes from ledger_tile where level = ? and tile_index = ?").params(level, index)
                .query((row, number) -> hashes(row.getBytes(1))).optional();
    }

    /** The roots of the {@code count} tiles of {@code level} from {@code index} on; fewer where there are fewer. */
    List<Hash> roots(int level, long index, int count) {
        return jdbc.sql("""
                        select root from ledger_tile
                        where level = ? and tile_index >= ? and tile_index < ? order by tile_index
                        """)
                .params(level, index, index + count)
                .query((row, number) -> Hash.fromHex(row.getString(1))).list();
    }

    /** How many leaves are in full tiles. */
    long leaves() {
        return jdbc.sql("""
                        select tile_index + 1 from ledger_tile
                        where level = 0 order by level, tile_index desc fetch first 1 row only
                        """)
                .query(Long.class).optional().orElse(0L) * Tile.WIDTH;
    }

    void deleteAll() {
        jdbc.sql("delete from ledger_tile").update();
    }

    private static byte[] bytes(List<Hash> hashes) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(hashes.size() * Hash.LENGTH);
        hashes.forEach(hash -> bytes.writeBytes(hash.bytes()));
        return bytes.toByteArray();
    }

    private static List<Hash> hashes(byte[] bytes) {
        List<Hash> hashes = new ArrayList<>();
        for (int at = 0; at < bytes.length; at += Hash.LENGTH) {
            hashes.add(Hash.of(Arrays.copyOfRange(bytes, at, at + Hash.LENGTH)));
        }
        return List.copyOf(hashes);
    }
}
