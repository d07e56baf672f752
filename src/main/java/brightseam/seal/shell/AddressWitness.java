package brightseam.seal.shell;

import brightseam.seal.shell.Seals.Sealed;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Optional;

/** An address that takes a head as the body of a POST. Follows no redirect and sends nothing secret. */
final class AddressWitness implements Witness {

    private static final Duration CONNECT_MAX = Duration.ofSeconds(5);
    private static final Duration ANSWER_MAX = Duration.ofSeconds(10);
    private static final int SUCCESS = 2;
    private static final int HUNDRED = 100;

    private final URI address;
    private final HttpClient client = HttpClient.newBuilder().connectTimeout(CONNECT_MAX)
            .followRedirects(HttpClient.Redirect.NEVER).build();

    /** Refuses an address with a name and password in it: it would stand on a page and in logs. */
    AddressWitness(URI address) {
        if (address.getUserInfo() != null || address.getHost() == null) {
            throw new SealsUnusable("brightseam.witness: an address has a host and neither a name nor a password in"
                    + " it. Write it as http(s)://host/path.");
        }
        this.address = address;
    }

    @Override
    public String place() {
        return address.getScheme() + "://" + address.getAuthority() + address.getPath();
    }

    @Override
    public void keep(Sealed head) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(address).timeout(ANSWER_MAX)
                .header("Content-Type", "text/plain; charset=utf-8")
                .POST(HttpRequest.BodyPublishers.ofString(head.note())).build();
        HttpResponse<Void> answer = client.send(request, HttpResponse.BodyHandlers.discarding());
        if (answer.statusCode() / HUNDRED != SUCCESS) {
            throw new IOException("it answered " + answer.statusCode());
        }
    }

    @Override
    public Optional<String> newest() {
        return Optional.empty();
    }
}
