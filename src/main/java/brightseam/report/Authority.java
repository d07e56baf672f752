package brightseam.report;

import brightseam.kernel.BadgeId;
import brightseam.people.Role;
import brightseam.traveller.Meaning;
import java.util.List;
import java.util.Optional;

/**
 * One person who signed in this record, and on what authority.
 *
 * @param roles held when signing
 * @param stamp held when signing
 * @param meanings what the signatures say, each once
 * @param signatures how many
 */
public record Authority(BadgeId badge, String name, List<Role> roles, Optional<String> stamp, List<Meaning> meanings,
        int signatures) {}
