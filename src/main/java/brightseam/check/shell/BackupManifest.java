package brightseam.check.shell;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * The list of what is in a backup, which is written last and read first.
 *
 * @param form {@value #FORM}
 * @param madeAt when, ISO 8601
 * @param database {@code h2} or {@code postgresql}
 * @param entries how many entries the ledger has in it
 * @param withKeys whether the secret halves of the keys and other secrets of the folder are in it
 * @param settings the server's settings that a restored shop should have again; none is secret
 * @param files every other file in it
 */
record BackupManifest(String form, String madeAt, String database, long entries, boolean withKeys,
        Map<String, String> settings, List<PackedFile> files) {

    static final String NAME = "manifest.json";
    static final String FORM = "brightseam-backup.1";

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    /** A file in the backup: its name in it, its bytes, and their SHA-256 in hexadecimal digits. */
    record PackedFile(String name, long bytes, String sha256) {}

    String json() {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(this) + "\n";
    }

    static BackupManifest read(byte[] json) throws IOException {
        try {
            BackupManifest read = MAPPER.readValue(json, BackupManifest.class);
            if (!FORM.equals(read.form()) || read.files() == null) {
                throw new IOException("its " + NAME + " has another form than " + FORM);
            }
            return read;
        } catch (JacksonException unreadable) {
            throw new IOException("its " + NAME + " cannot be read", unreadable);
        }
    }
}
