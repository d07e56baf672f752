package brightseam.procedure;

import brightseam.kernel.Origin;

/**
 * A named person approved one revision for use. Written as {@code procedure-approved.1} into its procedure's stream.
 *
 * @param id such as {@code TUBE}
 * @param revision such as {@code A}
 * @param sha256 hash of the approved bytes, 64 hexadecimal digits
 * @param content the approved file's text; its UTF-8 bytes have the hash
 * @param origin who approved it, when and where
 */
public record ProcedureApproved(String id, String revision, String sha256, String content, Origin origin) {

    /** Names the approved revision. */
    public ProcedureRef ref() {
        return new ProcedureRef(id, revision, sha256);
    }
}
