package brightseam.ui.admin;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import brightseam.seal.Hash;
import brightseam.seal.NoteKey;
import brightseam.seal.NoteVerifier;
import brightseam.seal.TreeHash;
import brightseam.seal.shell.Seals.BackDated;
import brightseam.seal.shell.Seals.KeyInUse;
import brightseam.seal.shell.Seals.Sealed;
import brightseam.seal.shell.Seals.WitnessState;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SealWordsTest {

    private static final Instant AT = Instant.parse("2031-03-04T08:00:00Z");
    private static final Sealed HEAD = new Sealed(1_042, TreeHash.EMPTY, "note\n", AT);
    private static final NoteVerifier KEY = NoteKey.of("example.invalid/log", new byte[Hash.LENGTH]).verifier();

    private final SealWords words = new SealWords(ZoneOffset.UTC);

    @Test
    void whether_everything_is_sealed_is_said_first() {
        assertThat(words.standing(Optional.empty(), 0, Optional.empty())).startsWith("Nothing was sealed yet.");
        assertThat(words.standing(Optional.of(HEAD), 1_042, Optional.empty()))
                .isEqualTo("Entries 1 to 1042 were sealed on 4 Mar 2031 08:00:00. That is every entry.");
        assertThat(words.standing(Optional.of(HEAD), 1_043, Optional.empty()))
                .endsWith("1 entry waits for the next head.");
        assertThat(words.standing(Optional.of(HEAD), 1_043, Optional.of("entry 5 is gone")))
                .startsWith("NOTHING IS SEALED ANY MORE: entry 5 is gone.").contains("check-ledger");
    }

    @Test
    void a_key_signs_alone_beside_another_or_no_more() {
        assertThat(words.standing(new KeyInUse(KEY, AT, Optional.empty(), true))).isEqualTo("SIGNS");
        assertThat(words.standing(new KeyInUse(KEY, AT, Optional.of(AT), true))).startsWith("signs beside the newest");
        assertThat(words.standing(new KeyInUse(KEY, AT, Optional.of(AT), false))).startsWith("signed until");
    }

    @Test
    void a_witness_that_fails_says_so_before_what_it_has() {
        assertThat(words.standing(new WitnessState("/share", Optional.of(HEAD), Optional.of("it is away"))))
                .isEqualTo("FAILS: it is away; it has the head over 1042 entries of 4 Mar 2031 08:00:00");
        assertThat(words.standing(new WitnessState("/share", Optional.empty(), Optional.empty())))
                .isEqualTo("has no head since the server started");
    }

    @Test
    void an_odd_time_is_told_with_how_odd_it_is() {
        Entry entry = new Entry(7, new StreamName("traveller/T-1"), 1, "signed.1", "{}", "", "");
        assertThat(words.note(new BackDated(entry, AT.minus(Duration.ofMinutes(185)), HEAD, Duration.ofMinutes(185))))
                .isEqualTo("says 4 Mar 2031 04:55:00, 3 h 5 min before the ledger was sealed without it");
        assertThat(words.note(new BackDated(entry, AT, HEAD, Duration.ofDays(2)))).contains(", 2 days before");
    }

    @Test
    void the_pieces_of_the_key_joined_are_the_key() {
        assertThat(String.join("", SealWords.parts(KEY))).isEqualTo(KEY.text());
        assertThat(words.sheet("Halcyon Deep Frames", new KeyInUse(KEY, AT, Optional.empty(), true)))
                .containsAll(SealWords.parts(KEY)).anyMatch(line -> line.contains("Halcyon Deep Frames"));
    }
}
