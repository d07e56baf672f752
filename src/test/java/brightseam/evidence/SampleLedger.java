package brightseam.evidence;

import brightseam.kernel.TravellerId;
import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.seal.Checkpoint;
import brightseam.seal.Hash;
import brightseam.seal.NoteKey;
import brightseam.seal.ProofMaker;
import brightseam.seal.SignedNote;
import brightseam.seal.TreeHash;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A ledger in memory that grows entry by entry and seals where it is told to. All of it is invented. */
final class SampleLedger {

    static final NoteKey KEY =
            NoteKey.of("sample-shop", Hash.sha256("sample".getBytes(StandardCharsets.UTF_8)).bytes());
    static final NoteKey NEXT_KEY =
            NoteKey.of("sample-shop", Hash.sha256("next".getBytes(StandardCharsets.UTF_8)).bytes());
    static final String PROCEDURE = "id: TUBE\ntitle: Clean the tube – é ℃ \uD83D\uDD27\n";

    private final List<Entry> entries = new ArrayList<>();
    private final String origin;

    SampleLedger(String origin) {
        this.origin = origin;
    }

    /** A traveller with two joints of work in it and one beside it, 12 entries. */
    static SampleLedger small() {
        SampleLedger ledger = new SampleLedger("sample-shop");
        String hash = Chain.sha256(PROCEDURE.getBytes(StandardCharsets.UTF_8));
        ledger.add("procedure/TUBE", "procedure-approved.1", "{\"content\":"
                + quoted(PROCEDURE) + ",\"id\":\"TUBE\",\"origin\":" + origin(0) + ",\"revision\":\"A\",\"sha256\":\""
                + hash + "\"}");
        ledger.add("person/P-0003", "person-registered.1", "{\"badge\":\"P-0003\",\"name\":\"Ida Quell\"}");
        ledger.add("traveller/T-1042", "released.1", released("T-1042", hash));
        ledger.add("traveller/T-1043", "released.1", released("T-1043", hash));
        ledger.add("person/P-0003", "signed-in.1", "{\"badge\":\"P-0003\"}");
        ledger.add("traveller/T-1042", "reading-taken.1", "{\"in_limits\":false,\"origin\":" + origin(5)
                + ",\"reading\":\"bath-temperature\",\"step\":\"pickle\",\"value\":\"21.50\"}");
        ledger.add("traveller/T-1042", "step-signed.1", signed("PERFORMED", 6));
        ledger.add("traveller/T-1043", "step-signed.1", signed("PERFORMED", 7));
        ledger.add("person/P-0003", "roles-changed.1", "{\"badge\":\"P-0003\",\"roles\":[\"LEAD\"]}");
        ledger.add("traveller/T-1042", "step-stamped.1", signed("INSPECTED", 8));
        ledger.add("traveller/T-1042", "closed.1", "{\"origin\":" + origin(9) + "}");
        ledger.add("person/P-0001", "signed-in.1", "{\"badge\":\"P-0001\"}");
        return ledger;
    }

    static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
    }

    static String origin(int minute) {
        return "{\"at\":{\"elapsed_millis\":" + minute * 60_000L + ",\"wall\":\"2031-03-04T09:" + (10 + minute)
                + ":30.250Z\"},\"by\":\"P-0007\",\"demo\":true,\"tablet\":\"bench-2\"}";
    }

    static String released(String label, String procedureHash) {
        return "{\"heat\":\"H-9T3381\",\"kit\":\"K-07\",\"origin\":" + origin(2)
                + ",\"pieces\":[1,2],\"procedure\":{\"id\":\"TUBE\",\"revision\":\"A\",\"sha256\":\"" + procedureHash
                + "\"},\"route\":[\"pickle\"],\"traveller\":\"" + label + "\"}";
    }

    static String signed(String meaning, int minute) {
        return "{\"load_with\":[],\"origin\":" + origin(minute) + ",\"signature\":{\"meaning\":\"" + meaning
                + "\",\"signer\":{\"badge\":\"P-0003\",\"factors\":\"badge+pin\",\"name\":\"Ida Quell\",\"roles\":"
                + "[\"INSPECTOR\"],\"stamp\":\"Q-03\"}},\"step\":\"pickle\"}";
    }

    Entry add(String stream, String type, String json) {
        StreamName name = new StreamName(stream);
        List<Entry> before = of(name);
        Entry entry = Chain.entry(entries.size() + 1L, name, before.size() + 1L, new NewEvent(type, json),
                before.isEmpty() ? Chain.GENESIS : before.getLast().hash());
        entries.add(entry);
        return entry;
    }

    List<Entry> of(StreamName stream) {
        return entries.stream().filter(entry -> entry.stream().equals(stream)).toList();
    }

    int size() {
        return entries.size();
    }

    private ProofMaker proofs() {
        return new ProofMaker(this::subtree);
    }

    private Hash subtree(int level, long index) {
        return level == 0
                ? TreeHash.leaf(entries.get((int) index))
                : TreeHash.node(subtree(level - 1, 2 * index), subtree(level - 1, 2 * index + 1));
    }

    /** The signed head over the first {@code size} entries. */
    String head(long size, NoteKey... keys) {
        Checkpoint head = new Checkpoint(origin, size, proofs().root(size),
                List.of("time 2031-03-04T09:" + (10 + size) + ":00Z"));
        return SignedNote.sign(head.text(), List.of(keys)).whole();
    }

    Evidence.Head earlier(long size, NoteKey... keys) {
        return new Evidence.Head(head(size, keys), proofs().consistency(size, size()));
    }

    Evidence.Part part(String stream, int... versions) {
        List<Entry> all = of(new StreamName(stream));
        List<Evidence.Item> items = new ArrayList<>();
        for (Entry entry : all) {
            boolean wanted = versions.length == 0;
            for (int version : versions) {
                wanted |= entry.version() == version;
            }
            if (wanted) {
                items.add(new Evidence.Item(Chain.envelope(entry.stream(), entry.version(), entry.type(), entry.json(),
                        entry.previous()), entry.position(), proofs().inclusion(entry.position() - 1, size())));
            }
        }
        return new Evidence.Part(new StreamName(stream), items);
    }

    /** The evidence of T-1042 with two earlier heads, the second signed by both keys. */
    Evidence evidence() {
        return new Evidence(new TravellerId("T-1042"), head(size(), KEY), List.of(earlier(6, KEY),
                earlier(8, KEY, NEXT_KEY)), List.of(KEY.verifier().text(), NEXT_KEY.verifier().text()),
                List.of(part("traveller/T-1042"), part("person/P-0003", 1, 3), part("procedure/TUBE")));
    }
}
