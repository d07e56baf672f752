package brightseam.check.shell;

import brightseam.check.BrokenLink;
import brightseam.seal.Hash;
import brightseam.seal.Tile;
import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The tree's hashes as they are stored, against the ones that were computed. */
final class StoredTiles {

    private final JdbcClient jdbc;
    private final long sealedSize;

    /** The last head covers {@code sealedSize} entries; tiles behind it may not be stored yet. */
    StoredTiles(JdbcClient jdbc, long sealedSize) {
        this.jdbc = jdbc;
        this.sealedSize = sealedSize;
    }

    private record Row(String root, byte[] hashes) {}

    /** What does not fit in the stored tile at the place of {@code computed}. */
    Optional<BrokenLink> check(Tile computed) {
        String place = place(computed.level(), computed.index());
        Optional<Row> stored = jdbc.sql("select root, hashes from ledger_tile where level = ? and tile_index = ?")
                .params(computed.level(), computed.index())
                .query((row, number) -> new Row(row.getString(1), row.getBytes(2))).optional();
        if (stored.isEmpty()) {
            return leavesThrough(computed) > sealedSize ? Optional.empty() : Optional.of(new BrokenLink(place,
                    "is missing among the tree's stored hashes", computed.root().hex(), "nothing"));
        }
        if (!stored.get().root().equals(computed.root().hex())) {
            return Optional.of(new BrokenLink(place, "has a stored root that is not the tree's",
                    computed.root().hex(), stored.get().root()));
        }
        return Arrays.equals(stored.get().hashes(), bytes(computed.hashes())) ? Optional.empty()
                : Optional.of(new BrokenLink(place, "has stored hashes that are not the tree's",
                        "SHA-256 " + Hash.sha256(bytes(computed.hashes())),
                        "SHA-256 " + Hash.sha256(stored.get().hashes())));
    }

    /** Stored tiles that a tree of {@code size} leaves does not have. */
    Optional<BrokenLink> surplus(long size) {
        return jdbc.sql("select level, tile_index from ledger_tile order by level, tile_index desc")
                .query((row, number) -> new Place(row.getInt(1), row.getLong(2))).list().stream()
                .filter(tile -> tile.level() < 0 || tile.index() < 0
                        || tile.index() >= size >>> Math.min(Long.SIZE - 1, (tile.level() + 1) * Tile.BITS))
                .findFirst()
                .map(tile -> new BrokenLink(place(tile.level(), tile.index()),
                        "is among the tree's stored hashes, and the tree has no such tile", "nothing",
                        "a tile"));
    }

    private record Place(int level, long index) {}

    private static long leavesThrough(Tile tile) {
        return (tile.index() + 1) << ((tile.level() + 1) * Tile.BITS);
    }

    private static String place(int level, long index) {
        return "the tree's tile " + index + " at level " + level;
    }

    private static byte[] bytes(List<Hash> hashes) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(hashes.size() * Hash.LENGTH);
        hashes.forEach(hash -> bytes.writeBytes(hash.bytes()));
        return bytes.toByteArray();
    }
}
