package brightseam.tls;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** How long certificates last, what the shop's authority may vouch for, and when a certificate is due. */
public final class Terms {

    /** Of the authority: as long as a tablet lasts, since each has to be enrolled by hand (common practice). */
    public static final Duration AUTHORITY_LIFE = Duration.ofDays(3_650);
    /** Browsers refuse server certificates of more than 398 days (CA/Browser Forum, Baseline Requirements 6.3.2). */
    public static final Duration SERVER_LIFE = Duration.ofDays(397);
    /** A month before its end, so that a server that runs for a year renews in time (common practice). */
    public static final Duration RENEWED_BEFORE_END = Duration.ofDays(30);
    /** Clocks of tablets run behind; a certificate is valid from an hour before it was made (common practice). */
    public static final Duration VALID_BEFORE = Duration.ofHours(1);

    /**
     * Domains that no public name lies under: RFC 6761 (localhost), RFC 6762 (local), RFC 8375 (home.arpa), and
     * {@code internal}, set aside by ICANN in 2024; {@code lan} is common practice of routers.
     */
    public static final List<String> PRIVATE_DOMAINS = List.of("localhost", "local", "lan", "internal", "home.arpa");

    /** Loopback, private and link-local networks as address/mask: RFC 1918, RFC 3927, RFC 4193, RFC 4291. */
    public static final List<String> PRIVATE_NETWORKS = List.of("127.0.0.0/8", "10.0.0.0/8", "172.16.0.0/12",
            "192.168.0.0/16", "169.254.0.0/16", "::1/128", "fc00::/7", "fe80::/10");

    private Terms() {}

    /**
     * Whether a server certificate has to be made anew.
     *
     * @param notAfter its end
     * @param inside what it was made for
     * @param wanted what the machine is called now
     */
    public static boolean isDue(Instant notAfter, HostNames inside, HostNames wanted, Instant now) {
        return !now.isBefore(notAfter.minus(RENEWED_BEFORE_END)) || !inside.covers(wanted);
    }
}
