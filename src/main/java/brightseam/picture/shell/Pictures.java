package brightseam.picture.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.picture.Picture;
import brightseam.picture.PictureCheck;
import brightseam.picture.PictureType;
import java.io.ByteArrayOutputStream;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/**
 * The stored pictures. They are on disk for good with the next append to the ledger, which the record that names one
 * always is.
 */
@Service
public class Pictures {

    private static final int PART_BYTES = 512 * 1024;

    private final JdbcClient jdbc;

    /** Pictures in the database of {@code jdbc}. */
    public Pictures(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Keeps {@code bytes}, or answers what stands against it. The same bytes are kept once. */
    public synchronized Decision<Picture> store(byte[] bytes, Origin origin) {
        Decision<Picture> checked = PictureCheck.check(bytes);
        if (checked instanceof Decision.Accepted<Picture> accepted) {
            Picture picture = accepted.events().getFirst();
            if (find(picture.sha256()).isEmpty()) {
                insertParts(jdbc, picture.sha256(), bytes);
                insert(picture, origin);
            }
        }
        return checked;
    }

    /** The picture with that key. */
    public Optional<Picture> find(String sha256) {
        return jdbc.sql("""
                        select sha256, type, width_pixels, height_pixels, size_bytes
                        from picture
                        where sha256 = :key
                        """)
                .param("key", sha256).query(Pictures::picture).optional();
    }

    /** The bytes of the picture with that key. */
    public Optional<byte[]> bytes(String sha256) {
        if (find(sha256).isEmpty()) {
            return Optional.empty();
        }
        List<byte[]> parts = jdbc.sql("select bytes from picture_part where sha256 = :key order by number")
                .param("key", sha256).query((row, number) -> row.getBytes("bytes")).list();
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        parts.forEach(all::writeBytes);
        return Optional.of(all.toByteArray());
    }

    /**
     * Puts the {@code bytes} of a picture behind {@code jdbc}, in place of any that are there. Its row comes last:
     * parts without it, from a server that was killed between them, are no picture.
     */
    public static void insertParts(JdbcClient jdbc, String sha256, byte[] bytes) {
        jdbc.sql("delete from picture_part where sha256 = :key").param("key", sha256).update();
        for (int from = 0; from < bytes.length; from += PART_BYTES) {
            jdbc.sql("insert into picture_part (sha256, number, bytes) values (:key, :number, :bytes)")
                    .param("key", sha256)
                    .param("number", from / PART_BYTES)
                    .param("bytes", Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + PART_BYTES)))
                    .update();
        }
    }

    private void insert(Picture picture, Origin origin) {
        jdbc.sql("""
                        insert into picture (sha256, type, width_pixels, height_pixels, size_bytes, stored_at,
                                             stored_by)
                        values (:key, :type, :width, :height, :size, :at, :by)
                        """)
                .param("key", picture.sha256())
                .param("type", picture.type().name())
                .param("width", picture.widthPixels())
                .param("height", picture.heightPixels())
                .param("size", picture.sizeBytes())
                .param("at", origin.at().wall().toString())
                .param("by", origin.by().value())
                .update();
    }

    private static Picture picture(ResultSet row, int number) throws SQLException {
        return new Picture(row.getString("sha256"), PictureType.valueOf(row.getString("type")),
                row.getInt("width_pixels"), row.getInt("height_pixels"), row.getInt("size_bytes"));
    }
}
