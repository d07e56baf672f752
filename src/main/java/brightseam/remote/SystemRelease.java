package brightseam.remote;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.SystemId;
import brightseam.kernel.TravellerId;
import java.util.List;
import java.util.Optional;

/**
 * What a shop system released under one key. It is stored in the same append as the travellers, so a key that is sent
 * again, after a lost answer or a restart, finds what it released and releases nothing more.
 *
 * @param system whose release it is
 * @param key what the system called it
 * @param contentSha256 SHA-256 of the canonical JSON of what was asked, 64 hexadecimal digits
 * @param kit for which kit
 * @param travellers what was released, in the order of the lines
 * @param answering who answers for it
 */
public record SystemRelease(SystemId system, String key, String contentSha256, KitId kit,
        List<TravellerId> travellers, BadgeId answering) {

    /** Copies the list. */
    public SystemRelease {
        travellers = List.copyOf(travellers);
    }

    /** It was released. Written forms are kept for ever. */
    public record Done(Origin origin, SystemId system, String key, String contentSha256, KitId kit,
            List<TravellerId> travellers) {
        /** Copies the list. */
        public Done {
            travellers = List.copyOf(travellers);
        }
    }

    /** The release that {@code done} tells of; there is one event under each key. */
    public static SystemRelease evolve(Optional<SystemRelease> before, Done done) {
        if (before.isPresent()) {
            throw new IllegalArgumentException("released twice under one key: " + done.key());
        }
        return new SystemRelease(done.system(), done.key(), done.contentSha256(), done.kit(), done.travellers(),
                done.origin().by());
    }

    /** Whether this is the release of {@code content}. */
    public boolean isOf(String content) {
        return contentSha256.equals(content);
    }

    /** Refused where something was released under the key already: it is answered for instead. */
    public static Decision<Done> decide(Optional<SystemRelease> before, Done done) {
        return before.isEmpty() ? Decision.accepted(List.of(done))
                : Decision.refused(List.of(new SystemRefusal.KeyUsedOtherwise(done.system(), done.key())));
    }
}
