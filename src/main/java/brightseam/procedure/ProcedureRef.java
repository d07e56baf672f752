package brightseam.procedure;

import brightseam.kernel.Syntax;

/**
 * Names one revision of one procedure beyond doubt.
 *
 * @param id such as {@code TUBE}
 * @param revision one to three capitals, such as {@code A}
 * @param sha256 hash of the file's bytes as approved, 64 hexadecimal digits
 */
public record ProcedureRef(String id, String revision, String sha256) {

    /** Refuses malformed parts. */
    public ProcedureRef {
        Syntax.identity("procedure name", id);
        if (!revision.matches("[A-Z]{1,3}")) {
            throw new IllegalArgumentException("revision: one to three capitals");
        }
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("content hash: 64 hexadecimal digits");
        }
    }

    /** Name and revision for people: {@code TUBE rev A}. */
    public String label() {
        return id + " rev " + revision;
    }
}
