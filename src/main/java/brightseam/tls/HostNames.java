package brightseam.tls;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * By what a machine is called.
 *
 * @param names host names in lower case, such as {@code bench-server.local}
 * @param addresses IP addresses as text
 */
public record HostNames(SortedSet<String> names, SortedSet<String> addresses) {

    /** Labels of letters, digits and inner hyphens, parted by points (RFC 1123, section 2.1). */
    private static final Pattern HOST = Pattern.compile(
            "[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?(\\.[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?)*");
    private static final int HOST_LENGTH_MAX = 253;

    /** Copies both. */
    public HostNames {
        names = new TreeSet<>(names);
        addresses = new TreeSet<>(addresses);
    }

    /** Takes {@code names} in lower case and leaves out what is no host name. */
    public static HostNames of(Collection<String> names, Collection<String> addresses) {
        SortedSet<String> hosts = new TreeSet<>();
        names.stream().map(name -> name.toLowerCase(Locale.ROOT)).filter(HostNames::isHost).forEach(hosts::add);
        return new HostNames(hosts, new TreeSet<>(addresses));
    }

    /** Those of the names that lie under one of {@code domains}; the addresses stay. */
    public HostNames under(List<String> domains) {
        return of(names.stream().filter(name -> domains.stream().anyMatch(domain ->
                name.equals(domain) || name.endsWith("." + domain))).toList(), addresses);
    }

    /** Whether everything in {@code others} is in here too. */
    public boolean covers(HostNames others) {
        return names.containsAll(others.names) && addresses.containsAll(others.addresses);
    }

    private static boolean isHost(String name) {
        return name.length() <= HOST_LENGTH_MAX && HOST.matcher(name).matches() && !name.matches("[0-9.]+");
    }
}
