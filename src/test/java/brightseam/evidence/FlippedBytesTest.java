package brightseam.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.seal.NoteVerifier;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FlippedBytesTest {

    private static final NoteVerifier KEY = SampleLedger.KEY.verifier();

    private final SampleLedger ledger = SampleLedger.small();

    @Test
    void no_flipped_byte_is_taken_for_the_file_that_was_made() {
        byte[] file = EvidenceForm.write(ledger.evidence());
        int[] others = new Random(20310304).ints(file.length, 2, 256).toArray();
        EvidenceVerifier withKey = new EvidenceVerifier(List.of(KEY), Optional.empty());
        EvidenceVerifier without = new EvidenceVerifier(List.of(), Optional.empty());
        assertThat(without.verify(file)).isInstanceOf(Verdict.Fits.class);
        List<Integer> accepted = IntStream.range(0, file.length).parallel().filter(at ->
                !(without.verify(flipped(file, at, 0x01)) instanceof Verdict.Broken)
                        || at % 8 == 0 && !(withKey.verify(flipped(file, at, others[at])) instanceof Verdict.Broken))
                .boxed().toList();
        assertThat(accepted).as("bytes of " + file.length + " that may be flipped unseen").isEmpty();
    }

    private static byte[] flipped(byte[] file, int at, int by) {
        byte[] changed = file.clone();
        changed[at] ^= (byte) by;
        return changed;
    }

    @Test
    void a_file_that_was_cut_anywhere_is_no_evidence() {
        byte[] file = EvidenceForm.write(ledger.evidence());
        EvidenceVerifier verifier = new EvidenceVerifier(List.of(), Optional.empty());
        for (int length = 0; length < file.length; length += 97) {
            assertThat(verifier.verify(Arrays.copyOf(file, length))).isInstanceOf(Verdict.Broken.class);
        }
    }
}
