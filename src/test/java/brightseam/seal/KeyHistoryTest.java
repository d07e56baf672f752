package brightseam.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KeyHistoryTest {

    private static final Instant MADE = Instant.parse("2031-01-01T00:00:00Z");
    private static final Instant NOW = Instant.parse("2031-03-04T08:00:00Z");
    private static final Duration OVERLAP = Duration.ofDays(30);
    private static final NoteVerifier FIRST = key(1);
    private static final NoteVerifier SECOND = key(2);
    private static final NoteVerifier THIRD = key(3);

    private final KeyHistory first = KeyHistory.of(FIRST, MADE);

    private static NoteVerifier key(int number) {
        byte[] seed = new byte[Hash.LENGTH];
        seed[0] = (byte) number;
        return NoteKey.of("example.invalid/log", seed).verifier();
    }

    private static Origin at(Instant wall) {
        return new Origin(new Moment(wall, 1), new BadgeId("P-0001"), "OFFICE", false);
    }

    private static KeyHistory rotated(KeyHistory before, NoteVerifier next, boolean isLost, Instant at) {
        Decision<LogEvent> decision = before.rotate(next, OVERLAP, isLost, "because", at(at));
        return ((Decision.Accepted<LogEvent>) decision).events().stream().reduce(before,
                (state, event) -> KeyHistory.evolve(Optional.of(state), event), (a, b) -> b);
    }

    @Test
    void after_a_rotation_both_keys_sign_until_the_overlap_ends() {
        KeyHistory after = rotated(first, SECOND, false, NOW);
        assertThat(after.uses()).containsExactly(
                new KeyHistory.Use(FIRST.text(), MADE, Optional.of(NOW.plus(OVERLAP))),
                new KeyHistory.Use(SECOND.text(), NOW, Optional.empty()));
        assertThat(after.uses()).allMatch(use -> use.isActive(NOW.plus(OVERLAP).minusMillis(1)));
        assertThat(after.uses()).filteredOn(use -> use.isActive(NOW.plus(OVERLAP)))
                .extracting(KeyHistory.Use::key).containsExactly(SECOND.text());
    }

    @Test
    void a_lost_key_signs_no_more_at_once_and_takes_older_ones_with_it() {
        KeyHistory both = rotated(first, SECOND, false, NOW);
        Instant found = NOW.plus(Duration.ofDays(3));
        KeyHistory after = rotated(both, THIRD, true, found);
        assertThat(after.uses()).filteredOn(use -> use.isActive(found))
                .extracting(KeyHistory.Use::key).containsExactly(THIRD.text());
    }

    @Test
    void while_two_keys_sign_no_third_is_taken_unless_one_is_lost() {
        KeyHistory both = rotated(first, SECOND, false, NOW);
        assertThat(both.rotate(THIRD, OVERLAP, false, "because", at(NOW.plus(Duration.ofDays(1)))))
                .isEqualTo(Decision.refused(java.util.List.of(new SealRefusal.KeyOverlapRuns(NOW.plus(OVERLAP)))));
        assertThat(both.rotate(THIRD, OVERLAP, false, "because", at(NOW.plus(OVERLAP))))
                .isInstanceOf(Decision.Accepted.class);
    }

    @Test
    void the_first_event_of_the_stream_tells_of_the_key_before_it_too() {
        Decision.Accepted<LogEvent> decision =
                (Decision.Accepted<LogEvent>) first.rotate(SECOND, OVERLAP, false, "because", at(NOW));
        KeyHistory fromNothing = KeyHistory.evolve(Optional.empty(), decision.events().getFirst());
        assertThat(fromNothing).isEqualTo(rotated(first, SECOND, false, NOW));
    }

    @Test
    void a_reason_is_asked_for() {
        assertThatThrownBy(() -> first.rotate(SECOND, OVERLAP, false, " ", at(NOW)))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("reason");
    }
}
