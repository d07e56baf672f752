package brightseam.tls.shell;

import brightseam.tls.HostNames;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.List;

/** What this machine is called in its networks. */
public final class Machine {

    private Machine() {}

    /** Its host name, the same under {@code .local}, {@code localhost}, and its loopback and private addresses. */
    public static HostNames names() {
        List<String> names = new ArrayList<>(List.of("localhost"));
        try {
            String host = InetAddress.getLocalHost().getHostName();
            names.add(host);
            names.add(host.replaceFirst("\\..*", "") + ".local");
        } catch (UnknownHostException unnamed) {
            names.add("localhost.local");
        }
        List<String> addresses = new ArrayList<>(privateAddresses());
        addresses.add("127.0.0.1");
        return HostNames.of(names, addresses);
    }

    /** Its IPv4 addresses in private networks (RFC 1918). */
    public static List<String> privateAddresses() {
        try {
            return NetworkInterface.networkInterfaces().filter(Machine::isUp)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(InetAddress::isSiteLocalAddress).map(InetAddress::getHostAddress)
                    .filter(host -> host.indexOf(':') < 0).sorted().toList();
        } catch (SocketException notTold) {
            return List.of();
        }
    }

    private static boolean isUp(NetworkInterface network) {
        try {
            return network.isUp();
        } catch (SocketException notTold) {
            return false;
        }
    }
}
