package brightseam.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.TravellerId;
import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import brightseam.report.RecordMark;
import brightseam.seal.NoteVerifier;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EvidenceVerifierTest {

    private static final StreamName OWN = new StreamName("traveller/T-1042");
    private static final NoteVerifier KEY = SampleLedger.KEY.verifier();

    private final SampleLedger ledger = SampleLedger.small();

    private static Verdict verify(Evidence evidence, NoteVerifier... keys) {
        return new EvidenceVerifier(List.of(keys), Optional.empty()).verify(EvidenceForm.write(evidence));
    }

    private static Proof proof(Evidence evidence, NoteVerifier... keys) {
        return ((Verdict.Fits) verify(evidence, keys)).proof();
    }

    private static Misfit misfit(Evidence evidence, NoteVerifier... keys) {
        return ((Verdict.Broken) verify(evidence, keys)).first();
    }

    private static String words(Verdict verdict) {
        return String.join("\n", VerdictWords.of(verdict, ZoneOffset.UTC));
    }

    private static Evidence parts(Evidence from, UnaryOperator<List<Evidence.Part>> change) {
        return new Evidence(from.traveller(), from.checkpoint(), from.heads(), from.keys(),
                change.apply(new ArrayList<>(from.parts())));
    }

    private static Evidence own(Evidence from, UnaryOperator<List<Evidence.Item>> change) {
        return parts(from, all -> {
            all.set(0, new Evidence.Part(OWN, change.apply(new ArrayList<>(all.getFirst().items()))));
            return all;
        });
    }

    @Test
    void a_whole_file_is_proven_by_the_key_that_was_given_and_says_what_is_not() {
        Verdict verdict = verify(ledger.evidence(), KEY);
        assertThat(((Verdict.Fits) verdict).proof().isVouchedFor()).isTrue();
        assertThat(words(verdict)).startsWith("PROVEN by the key that was given\n  key " + KEY.text())
                .contains("T-1042: entries 1 to 5 stand as they were written", "DEMO")
                .contains("of 12 entries", "signed at 4 Mar 2031 09:22:00", "grew from each of 2 earlier heads")
                .contains("pickle: step signed by Ida Quell (P-0003, stamp Q-03, inspector) – performed as written",
                        "4 Mar 2031 09:16:30", "reading bath-temperature, value 21.50", "OUT OF LIMITS")
                .contains("What is named and not in the file: H-9T3381, K-07, Q-03.")
                .contains("nothing else was written about person P-0003", "nothing is left to do");
    }

    @Test
    void without_a_key_it_says_that_whoever_made_the_file_may_have_made_the_key() {
        Verdict verdict = verify(ledger.evidence());
        assertThat(((Verdict.Fits) verdict).proof().isVouchedFor()).isFalse();
        assertThat(words(verdict)).startsWith("FITS TOGETHER, AND NOBODY VOUCHES FOR IT: no key was given")
                .contains("Whoever made this file may have made the keys in it, too");
    }

    @Test
    void heads_bound_the_time_in_which_an_entry_came_into_the_ledger() {
        List<FactLine> lines = proof(ledger.evidence(), KEY).lines();
        assertThat(lines.get(1).inBy()).contains(Instant.parse("2031-03-04T09:16:00Z"));
        assertThat(lines.get(1).notYetAt()).isEmpty();
        assertThat(lines.get(2).inBy()).contains(Instant.parse("2031-03-04T09:18:00Z"));
        assertThat(lines.get(2).notYetAt()).contains(Instant.parse("2031-03-04T09:16:00Z"));
        assertThat(lines.get(4).inBy()).contains(Instant.parse("2031-03-04T09:22:00Z"));
    }

    @Test
    void an_entry_that_states_a_time_at_which_the_ledger_did_not_have_it_is_marked() {
        SampleLedger late = new SampleLedger("sample-shop");
        late.add("traveller/T-1042", "released.1", SampleLedger.released("T-1042", "0".repeat(64)));
        IntStream.range(0, 8).forEach(i -> late.add("person/P-0001", "signed-in.1", "{\"at\":" + i + "}"));
        late.add("traveller/T-1042", "step-signed.1", SampleLedger.signed("PERFORMED", 7));
        late.add("traveller/T-1042", "step-signed.1", SampleLedger.signed("PERFORMED", 9));
        Evidence told = new Evidence(new TravellerId("T-1042"), late.head(11, SampleLedger.KEY),
                List.of(late.earlier(9, SampleLedger.KEY)), List.of(), List.of(late.part("traveller/T-1042")));
        assertThat(proof(told, KEY).lines()).extracting(FactLine::isBackDated).containsExactly(false, true, false);
        assertThat(words(verify(told, KEY))).contains("The times of 1 entry marked below")
                .contains("STATES A TIME AT WHICH THE LEDGER DID NOT HAVE IT");
    }

    @Test
    void a_changed_entry_is_named_by_number_traveller_event_and_step() {
        Evidence changed = own(ledger.evidence(), items -> {
            Evidence.Item signed = items.get(2);
            items.set(2, new Evidence.Item(signed.envelope().replace("Ida Quell", "Ada Quell"), signed.position(),
                    signed.path()));
            return items;
        });
        assertThat(words(verify(changed, KEY))).startsWith("DOES NOT FIT\nEntry 3 of T-1042 (step-signed, step pickle)")
                .contains("was changed after sealing");
    }

    @Test
    void a_whole_chain_forged_anew_is_found_by_the_signed_head() {
        SampleLedger forged = new SampleLedger("sample-shop");
        for (int i = 0; i < 12; i++) {
            forged.add("traveller/T-1042", "released.1", SampleLedger.released("T-1042", "0".repeat(64)));
        }
        Evidence real = ledger.evidence();
        Evidence swapped = new Evidence(real.traveller(), real.checkpoint(), real.heads(), real.keys(),
                List.of(forged.part("traveller/T-1042")));
        assertThat(misfit(swapped, KEY)).isInstanceOf(Misfit.NotInHead.class);
    }

    @Test
    void another_shops_key_does_not_vouch() {
        NoteVerifier other = SampleLedger.NEXT_KEY.verifier();
        assertThat(misfit(ledger.evidence(), other)).isInstanceOf(Misfit.NotSignedByGiven.class);
        assertThat(proof(ledger.evidence(), other, KEY).vouching()).containsExactly(KEY.text());
    }

    @Test
    void a_trusted_key_does_not_vouch_for_a_ledger_of_another_name() {
        SampleLedger posing = new SampleLedger("another-shop");
        posing.add("traveller/T-1042", "released.1", SampleLedger.released("T-1042", "0".repeat(64)));
        Evidence told = new Evidence(new TravellerId("T-1042"), posing.head(1, SampleLedger.KEY), List.of(),
                List.of(), List.of(posing.part("traveller/T-1042")));
        assertThat(misfit(told, KEY)).isInstanceOf(Misfit.NotSignedByGiven.class);
    }

    @Test
    void after_a_rotation_the_old_key_vouches_for_heads_of_its_time_and_the_new_one_for_the_rest() {
        Evidence real = ledger.evidence();
        Evidence rotated = new Evidence(real.traveller(), ledger.head(12, SampleLedger.NEXT_KEY), real.heads(),
                real.keys(), real.parts());
        NoteVerifier next = SampleLedger.NEXT_KEY.verifier();
        assertThat(misfit(rotated, KEY)).isInstanceOf(Misfit.NotSignedByGiven.class);
        Proof byNext = proof(rotated, next);
        assertThat(byNext.lines().get(1).inBy()).as("the head of 6 is signed by the old key alone")
                .contains(Instant.parse("2031-03-04T09:18:00Z"));
        assertThat(proof(rotated, KEY, next).lines().get(1).inBy()).contains(Instant.parse("2031-03-04T09:16:00Z"));
    }

    @Test
    void a_head_of_another_ledger_does_not_fit() {
        SampleLedger other = SampleLedger.small();
        other.add("person/P-0009", "signed-in.1", "{\"badge\":\"P-0009\"}");
        Evidence real = ledger.evidence();
        Evidence foreignHead = new Evidence(real.traveller(), other.head(13, SampleLedger.KEY), List.of(), real.keys(),
                real.parts());
        assertThat(misfit(foreignHead, KEY)).isInstanceOf(Misfit.NotInHead.class);
        SampleLedger rewritten = new SampleLedger("sample-shop");
        IntStream.range(0, 12).forEach(i -> rewritten.add("person/P-0001", "signed-in.1", "{\"at\":" + i + "}"));
        Evidence foreignEarlier = new Evidence(real.traveller(), real.checkpoint(),
                List.of(rewritten.earlier(6, SampleLedger.KEY)), real.keys(), real.parts());
        assertThat(words(verify(foreignEarlier, KEY))).contains("did not grow from the earlier head 1, of 6 entries");
        SampleLedger named = new SampleLedger("another-shop");
        IntStream.range(0, 12).forEach(i -> named.add("person/P-0001", "signed-in.1", "{\"at\":" + i + "}"));
        Evidence otherName = new Evidence(real.traveller(), real.checkpoint(),
                List.of(named.earlier(6, SampleLedger.KEY)), real.keys(), real.parts());
        assertThat(misfit(otherName, KEY)).isInstanceOf(Misfit.OtherLedger.class);
    }

    @Test
    void an_entry_of_another_traveller_is_named_where_it_was_swapped_in() {
        Evidence.Item foreign = ledger.part("traveller/T-1043").items().get(1);
        Evidence swapped = own(ledger.evidence(), items -> {
            items.set(2, foreign);
            return items;
        });
        assertThat(words(verify(swapped, KEY)))
                .contains("Entry 2 of T-1043 (step-signed, step pickle) stands among the entries of T-1042");
        Evidence posing = new Evidence(new TravellerId("T-1043"), ledger.evidence().checkpoint(), List.of(),
                List.of(KEY.text()), ledger.evidence().parts());
        assertThat(misfit(posing, KEY)).isInstanceOf(Misfit.StreamOutOfPlace.class);
    }

    @Test
    void an_entry_left_out_in_the_middle_is_missed_and_one_at_the_end_is_an_older_state() {
        Evidence holed = own(ledger.evidence(), items -> {
            items.remove(1);
            return items;
        });
        assertThat(words(verify(holed, KEY))).contains("Entry 2 of T-1042 is missing");
        Evidence shortened = own(ledger.evidence(), items -> items.subList(0, 3));
        assertThat(words(verify(shortened, KEY)))
                .contains("THE RECORD IS NOT FINISHED at entry 3; later entries are not in this file");
    }

    @Test
    void the_paper_tells_whether_entries_are_missing_at_the_end_and_whether_it_is_of_this_file() {
        List<Entry> own = ledger.of(OWN);
        RecordMark.Sealed head = new RecordMark.Sealed(12, root());
        String mark = new RecordMark(new TravellerId("T-1042"), 5, own.get(4).hash(), Optional.of(head)).payload();
        assertThat(paper(ledger.evidence(), mark)).contains("The paper belongs to this file", "names the same head");
        String earlier = new RecordMark(new TravellerId("T-1042"), 3, own.get(2).hash()).payload();
        assertThat(paper(ledger.evidence(), earlier)).contains("up to entry 3, an earlier state");
        Evidence shortened = own(ledger.evidence(), items -> items.subList(0, 3));
        assertThat(paper(shortened, mark)).contains("On paper the number of entries is 5, in the file 3");
        assertThat(paper(ledger.evidence(), mark.replace("T-1042", "T-1043"))).contains("the traveller is T-1043");
        String changed = new RecordMark(new TravellerId("T-1042"), 5, "0".repeat(64), Optional.of(head)).payload();
        assertThat(paper(ledger.evidence(), changed)).contains("the hash of entry 5");
        String otherRoot = new RecordMark(new TravellerId("T-1042"), 5, own.get(4).hash(),
                Optional.of(new RecordMark.Sealed(12, "0".repeat(64)))).payload();
        assertThat(paper(ledger.evidence(), otherRoot)).contains("the root of the ledger at 12 entries");
        assertThat(paper(ledger.evidence(), "T-1042")).contains("no mark of a record");
    }

    private String root() {
        return new EvidenceVerifier(List.of(), Optional.empty()).verify(EvidenceForm.write(ledger.evidence()))
                instanceof Verdict.Fits fits ? fits.proof().head().root().hex() : "none";
    }

    private static String paper(Evidence evidence, String mark) {
        return words(new EvidenceVerifier(List.of(KEY), Optional.of(mark)).verify(EvidenceForm.write(evidence)));
    }

    @Test
    void a_stream_that_stands_twice_or_out_of_order_is_refused() {
        Evidence twice = parts(ledger.evidence(), all -> {
            all.add(all.getLast());
            return all;
        });
        assertThat(misfit(twice, KEY)).isInstanceOf(Misfit.StreamOutOfPlace.class);
        Evidence none = parts(ledger.evidence(), all -> List.of());
        assertThat(misfit(none, KEY)).isInstanceOf(Misfit.StreamOutOfPlace.class);
    }

    @Test
    void a_signature_of_a_key_that_nobody_named_is_refused() {
        Evidence real = ledger.evidence();
        Evidence unnamed = new Evidence(real.traveller(), real.checkpoint(), real.heads(), List.of(KEY.text()),
                real.parts());
        assertThat(words(verify(unnamed, KEY))).contains("Under earlier head 2 stands a signature of a key");
    }

    @Test
    void a_procedure_text_that_has_not_its_hash_and_one_that_was_not_approved_are_named() {
        SampleLedger other = new SampleLedger("sample-shop");
        other.add("procedure/TUBE", "procedure-approved.1", "{\"content\":\"x\",\"id\":\"TUBE\",\"revision\":\"A\","
                + "\"sha256\":\"" + "0".repeat(64) + "\"}");
        other.add("traveller/T-1042", "released.1", SampleLedger.released("T-1042", "0".repeat(64)));
        assertThat(misfit(of(other), KEY)).isInstanceOf(Misfit.ProcedureTextWrong.class);
        SampleLedger unapproved = new SampleLedger("sample-shop");
        unapproved.add("procedure/TUBE", "procedure-approved.1", "{\"content\":\"x\",\"id\":\"TUBE\","
                + "\"revision\":\"A\",\"sha256\":\"" + Chain.sha256("x".getBytes(StandardCharsets.UTF_8)) + "\"}");
        unapproved.add("traveller/T-1042", "released.1", SampleLedger.released("T-1042", "0".repeat(64)));
        assertThat(misfit(of(unapproved), KEY)).isEqualTo(new Misfit.ProcedureNotApproved("TUBE", "A"));
    }

    private static Evidence of(SampleLedger ledger) {
        return new Evidence(new TravellerId("T-1042"), ledger.head(ledger.size(), SampleLedger.KEY), List.of(),
                List.of(KEY.text()), List.of(ledger.part("traveller/T-1042"), ledger.part("procedure/TUBE")));
    }

    @Test
    void a_history_inside_an_entry_has_to_be_what_the_parents_own_entries_say() {
        assertThat(verify(apart("21.50"), KEY)).isInstanceOf(Verdict.Fits.class);
        assertThat(proof(apart("21.50"), KEY).lines()).extracting(FactLine::number).containsExactly("1/1", "1/2", "1");
        assertThat(words(verify(apart("22.50"), KEY)))
                .contains("tells a history of T-1042 that its own entries do not tell, at entry 2");
    }

    private static Evidence apart(String toldValue) {
        SampleLedger ledger = new SampleLedger("sample-shop");
        String released = SampleLedger.released("T-1042", "0".repeat(64));
        String reading = "{\"origin\":" + SampleLedger.origin(3) + ",\"reading\":\"t\",\"value\":\"21.50\"}";
        ledger.add("traveller/T-1042", "released.1", released);
        ledger.add("traveller/T-1042", "reading-taken.1", reading);
        ledger.add("traveller/T-1042.1", "set-apart.2", "{\"history\":[{\"event\":" + released
                + ",\"type\":\"released.1\"},{\"event\":" + reading.replace("21.50", toldValue)
                + ",\"type\":\"reading-taken.2\"}],\"origin\":" + SampleLedger.origin(4)
                + ",\"parent\":\"T-1042\",\"parent_version\":2,\"traveller\":\"T-1042.1\"}");
        return new Evidence(new TravellerId("T-1042.1"), ledger.head(3, SampleLedger.KEY), List.of(),
                List.of(KEY.text()), List.of(ledger.part("traveller/T-1042.1"), ledger.part("traveller/T-1042")));
    }
}
