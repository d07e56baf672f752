package brightseam.crash;

import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import brightseam.ledger.Flaw;
import brightseam.ledger.StreamName;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The whole ledger as the server that came back shows it, looked through from outside. */
final class LedgerLook {

    private static final Pattern ELAPSED = Pattern.compile("\"elapsed_millis\":(\\d{1,15})");
    /** Between two entries of a run lie at most a kill and a start of the server. */
    private static final long ELAPSED_MILLIS_MAX = 30 * 60_000;

    private final Map<String, String> hashes = new HashMap<>();
    private final Map<StreamName, List<String>> types = new TreeMap<>();
    private final ChainVerifier verifier = new ChainVerifier();
    private final List<String> faults = new ArrayList<>();
    private long entries;
    private long elapsedMillis;

    private LedgerLook() {}

    /** Reads everything from the server at {@code url}. */
    static LedgerLook at(HttpClient http, String url) throws IOException, InterruptedException {
        LedgerLook look = new LedgerLook();
        String page = get(http, url + "/crash/ledger?after=0");
        while (!page.isEmpty()) {
            page.lines().map(LedgerLook::entry).forEach(look::take);
            page = get(http, url + "/crash/ledger?after=" + look.entries);
        }
        return look;
    }

    /** What the server at {@code url} answers for a path. */
    static String get(HttpClient http, String url) throws IOException, InterruptedException {
        HttpResponse<String> answer = http.send(
                HttpRequest.newBuilder(URI.create(url)).build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(url + " answers " + answer.statusCode() + ": " + answer.body());
        }
        return answer.body();
    }

    long entries() {
        return entries;
    }

    /** Everything that is not as it was acknowledged, or does not fit together; empty where all is well. */
    List<String> faults(Acknowledged acknowledged) {
        List<String> found = new ArrayList<>(faults);
        acknowledged.hashes().forEach((place, hash) -> {
            String there = hashes.get(place);
            if (!hash.equals(there)) {
                found.add("acknowledged " + place + " with " + hash + ", found " + there);
            }
        });
        found.addAll(halves());
        return found;
    }

    /**
     * Two lots are released in one request and go through every other together, so that the records of every second
     * label and the one after it are alike, entry by entry.
     */
    private List<String> halves() {
        List<String> found = new ArrayList<>();
        List<StreamName> lots = types.keySet().stream()
                .filter(stream -> stream.family().equals("traveller")).toList();
        for (StreamName lot : lots) {
            long number = Long.parseLong(lot.identity().substring(2));
            StreamName other = StreamName.of("traveller", "T-" + (number % 2 == 0 ? number - 1 : number + 1));
            if (!types.get(lot).equals(types.get(other))) {
                found.add("half a request: " + lot + " " + types.get(lot) + ", " + other + " " + types.get(other));
            }
        }
        return found;
    }

    private void take(Entry entry) {
        Optional<Flaw> flaw = verifier.next(entry);
        flaw.ifPresent(broken -> faults.add(broken.toString()));
        hashes.put(entry.stream() + " " + entry.version(), entry.hash());
        types.computeIfAbsent(entry.stream(), first -> new ArrayList<>()).add(entry.type());
        entries = entry.position();
        if (entry.stream().family().equals("traveller")) {
            ELAPSED.matcher(entry.json()).results().forEach(found -> elapsed(entry, Long.parseLong(found.group(1))));
        }
    }

    /** A stepped wall clock neither stretches nor shortens the shop's elapsed time; tablets that wait are near it. */
    private void elapsed(Entry entry, long millis) {
        if (elapsedMillis > 0 && Math.abs(millis - elapsedMillis) > ELAPSED_MILLIS_MAX) {
            faults.add("elapsed time goes from " + elapsedMillis + " to " + millis + " ms at " + entry.position());
        }
        elapsedMillis = millis;
    }

    private static Entry entry(String line) {
        String[] parts = line.split("\t", 7);
        return new Entry(Long.parseLong(parts[0]), new StreamName(parts[1]), Long.parseLong(parts[2]), parts[3],
                parts[6], parts[4], parts[5]);
    }
}
