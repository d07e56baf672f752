package brightseam.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;

class SignedNoteTest {

    private static final NoteKey KEY = NoteKey.of("halcyon.example/ledger", new byte[Hash.LENGTH]);
    private static final Checkpoint HEAD = new Checkpoint(
            "halcyon.example/ledger", 42, TreeHash.EMPTY, List.of("time 2031-03-04T09:00:00Z"));

    /** RFC 8032, section 7.1, tests 1 and 2. */
    @Test
    void keys_and_signatures_are_those_of_the_rfc() {
        assertRfc("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
                "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
                "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b"
                + "d25bf5f0595bbe24655141438e7a100b");
        assertRfc("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
                "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
                "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
                + "387b2eaeb4302aeeb00d291612bb0c00");
    }

    /** The example in the documentation of Go's package note, which reads and writes the same form. */
    @Test
    void a_published_note_of_another_program_is_verified_by_its_published_key() {
        NoteVerifier key = NoteVerifier.parse("PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW")
                .orElseThrow();
        String note = """
                If you think cryptography is the answer to your problem,
                then you don't know what your problem is.

                \u2014 PeterNeumann x08go/ZJkuBS9UG/SffcvIAQxVBtiFupLLr8pAcElZInNIuGUgYN1FFYC2pZSNXgKvqfqdngotpRZb6KE6\
                RyyBwJnAM=
                """;
        assertThat(SignedNote.parse(note).orElseThrow().isSignedBy(key)).isTrue();
        assertThat(SignedNote.parse(note.replace("answer", "Answer")).orElseThrow().isSignedBy(key)).isFalse();
    }

    @Test
    void keys_come_back_from_their_texts_and_only_whole() {
        NoteKey key = NoteKey.generate("k", new SecureRandom());
        assertThat(NoteKey.parse(key.secretText() + "\n").orElseThrow().verifier()).isEqualTo(key.verifier());
        assertThat(NoteVerifier.parse(key.verifier().text())).contains(key.verifier());
        assertThat(key.toString()).isEqualTo(key.verifier().text());
        String text = key.verifier().text();
        for (int i = 0; i < text.length() - 1; i++) {
            String changed = text.substring(0, i) + (text.charAt(i) == 'A' ? 'B' : 'A') + text.substring(i + 1);
            assertThat(NoteVerifier.parse(changed).filter(key.verifier()::equals)).as(changed).isEmpty();
        }
    }

    @Test
    void a_head_signed_by_two_keys_is_verified_by_either_and_by_no_third() {
        NoteKey next = NoteKey.generate("halcyon.example/ledger", new SecureRandom());
        SignedNote note = SignedNote.sign(HEAD.text(), List.of(KEY, next));
        SignedNote read = SignedNote.parse(note.whole()).orElseThrow();
        assertThat(read.isSignedBy(KEY.verifier())).isTrue();
        assertThat(read.isSignedBy(next.verifier())).isTrue();
        NoteKey third = NoteKey.generate("halcyon.example/ledger", new SecureRandom());
        assertThat(read.isSignedBy(third.verifier())).isFalse();
        assertThat(Checkpoint.parse(read.text())).contains(HEAD);
    }

    @Test
    void no_byte_of_a_note_can_be_changed() {
        byte[] whole = SignedNote.sign(HEAD.text(), List.of(KEY)).whole().getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < whole.length; i++) {
            byte[] changed = whole.clone();
            changed[i] ^= 1;
            String text = new String(changed, StandardCharsets.UTF_8);
            assertThat(SignedNote.parse(text).filter(note -> note.isSignedBy(KEY.verifier())))
                    .as("byte %s", i).isEmpty();
        }
    }

    @Test
    void a_checkpoint_has_one_form() {
        assertThat(HEAD.text()).isEqualTo("halcyon.example/ledger\n42\n"
                + "47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=\ntime 2031-03-04T09:00:00Z\n");
        for (String bad : List.of("", "a\n1\n", HEAD.text().replace("42", "042"), HEAD.text().replace("42", "-1"),
                HEAD.text().replace("47D", "48"), HEAD.text().strip(), HEAD.text() + "\n")) {
            assertThat(Checkpoint.parse(bad)).as(bad).isEmpty();
        }
        assertThatThrownBy(() -> new Checkpoint("a\nb", 1, TreeHash.EMPTY, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static void assertRfc(String secret, String point, String message, String signature) {
        NoteKey key = NoteKey.of("k", HexFormat.of().parseHex(secret));
        assertThat(key.verifier()).isEqualTo(new NoteVerifier("k", HexFormat.of().parseHex(point)));
        byte[] bytes = HexFormat.of().parseHex(message);
        assertThat(HexFormat.of().formatHex(key.sign(bytes))).isEqualTo(signature);
        assertThat(key.verifier().verify(bytes, HexFormat.of().parseHex(signature))).isTrue();
        bytes = new byte[] {1, 2};
        assertThat(key.verifier().verify(bytes, HexFormat.of().parseHex(signature))).isFalse();
    }
}
