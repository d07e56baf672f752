package brightseam.move.shell;

import brightseam.check.shell.PackedZip;
import java.io.IOException;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * The list of what is in an export.
 *
 * @param form {@value #FORM}
 * @param madeAt when, ISO 8601
 * @param entries how many entries there are
 * @param streams how many streams they belong to
 * @param root of the tree over them (RFC 9162), 64 hexadecimal digits
 * @param heads how many signed heads there are
 * @param readings how many readings of meters there are
 * @param pictures how many pictures there are
 * @param withSecrets whether secrets are in it
 * @param files every other file in it
 */
record ExportManifest(String form, String madeAt, long entries, int streams, String root, long heads, long readings,
        long pictures, boolean withSecrets, List<PackedZip.Listed> files) {

    static final String NAME = "manifest.json";
    static final String FORM = "brightseam-export.1";

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    String json() {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(this) + "\n";
    }

    static ExportManifest read(byte[] json) throws IOException {
        try {
            ExportManifest read = MAPPER.readValue(json, ExportManifest.class);
            if (!FORM.equals(read.form()) || read.files() == null) {
                throw new IOException("its " + NAME + " has another form than " + FORM);
            }
            return read;
        } catch (JacksonException unreadable) {
            throw new IOException("its " + NAME + " cannot be read", unreadable);
        }
    }
}
