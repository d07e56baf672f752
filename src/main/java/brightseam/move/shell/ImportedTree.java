package brightseam.move.shell;

import brightseam.check.StoredRow;
import brightseam.seal.Hash;
import brightseam.seal.Tile;
import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;

/** Rows of the ledger, of its tree and of pictures, inserted as they were. */
final class ImportedTree {

    private static final int AT_ONCE = 200;
    /** As many bytes of a picture as one row takes; what stores pictures parts them so. */
    private static final int PART_BYTES = 512 * 1024;

    private final JdbcTemplate batches;

    ImportedTree(JdbcTemplate batches) {
        this.batches = batches;
    }

    void insert(List<StoredRow> rows) {
        batches.batchUpdate("""
                insert into ledger_entry (position, stream, version, type, json, previous, hash)
                values (?, ?, ?, ?, ?, ?, ?)
                """, rows, AT_ONCE, (statement, row) -> {
                    statement.setLong(1, row.position());
                    statement.setString(2, row.stream());
                    statement.setLong(3, row.version());
                    statement.setString(4, row.type());
                    statement.setString(5, row.json());
                    statement.setString(6, row.previous());
                    statement.setString(7, row.hash());
                });
    }

    /** Tiles of the tree beyond the last head are left to the first start. */
    void insertTiles(List<Tile> tiles) {
        batches.batchUpdate("insert into ledger_tile (level, tile_index, root, hashes) values (?, ?, ?, ?)", tiles,
                AT_ONCE, (statement, tile) -> {
                    ByteArrayOutputStream bytes = new ByteArrayOutputStream(Tile.WIDTH * Hash.LENGTH);
                    tile.hashes().forEach(hash -> bytes.writeBytes(hash.bytes()));
                    statement.setInt(1, tile.level());
                    statement.setLong(2, tile.index());
                    statement.setString(3, tile.root().hex());
                    statement.setBytes(4, bytes.toByteArray());
                });
    }

    void insertPicture(String sha256, byte[] bytes) {
        for (int number = 0; number * PART_BYTES < bytes.length; number++) {
            byte[] part = Arrays.copyOfRange(
                    bytes, number * PART_BYTES, Math.min(bytes.length, (number + 1) * PART_BYTES));
            batches.update("insert into picture_part (sha256, number, bytes) values (?, ?, ?)",
                    sha256, number, part);
        }
    }
}
