package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import java.time.Instant;
import java.util.Optional;

/** One line of the stamp register: a number, its only holder ever, and when it was issued and withdrawn. */
public record StampRecord(
        String stamp,
        BadgeId badge,
        String name,
        Instant issuedAt,
        Optional<Instant> withdrawnAt,
        Optional<String> withdrawnFor) {}
