package brightseam.crash;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;

/** What the server has acknowledged to the tablets: the hash of each entry, by stream and version. */
final class Acknowledged {

    /** The event of a signature, in whatever written form. */
    private static final String SIGNED = "step-signed.";

    private final Map<String, String> hashes = new ConcurrentHashMap<>();
    private final LongAdder requests = new LongAdder();
    private final LongAdder signatures = new LongAdder();
    private final LongAdder cutOff = new LongAdder();
    private final LongAdder refused = new LongAdder();

    /** Takes the lines of one answer, each stream, version, hash and type. */
    void add(List<String> lines) {
        requests.increment();
        for (String line : lines) {
            String[] words = line.split(" ");
            if (words[3].startsWith(SIGNED)) {
                signatures.increment();
            }
            String before = hashes.put(words[0] + " " + words[1], words[2]);
            if (before != null) {
                throw new IllegalStateException("acknowledged twice: " + line + ", before " + before);
            }
        }
    }

    /** A request that got no answer: nobody may rely on it, and it may count all the same. */
    void unanswered() {
        cutOff.increment();
    }

    /** A request that was answered with a refusal or as not stored. */
    void refused() {
        refused.increment();
    }

    Map<String, String> hashes() {
        return hashes;
    }

    /** How many signatures are among them. */
    long signatures() {
        return signatures.sum();
    }

    int entries() {
        return hashes.size();
    }

    long requests() {
        return requests.sum();
    }

    @Override
    public String toString() {
        return "%,d entries in %,d answers, %,d signatures; %,d requests cut off, %,d refused".formatted(
                entries(), requests(), signatures.sum(), cutOff.sum(), refused.sum());
    }
}
