package brightseam.chamber;

import static brightseam.chamber.Gear.CHAMBER;
import static brightseam.chamber.Gear.CHEMIST;
import static brightseam.chamber.Gear.FABRICATOR;
import static brightseam.chamber.Gear.INSPECTOR;
import static brightseam.chamber.Gear.LEAD;
import static brightseam.chamber.Gear.MATERIALS;
import static brightseam.chamber.Gear.chamber;
import static brightseam.chamber.Gear.codes;
import static brightseam.chamber.Gear.decimal;
import static brightseam.chamber.Gear.terms;
import static brightseam.kernel.Samples.ORIGIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.Decision;
import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import brightseam.people.Signer;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChamberDeciderTest {

    private static final SupplyId ONE = new SupplyId("G-0601");
    private static final SupplyId TWO = new SupplyId("G-0602");
    private static final SupplyId THREE = new SupplyId("G-0603");

    private static List<String> refusals(Optional<Chamber> chamber, ChamberCommand command) {
        return codes(ChamberDecider.decide(chamber, command, MATERIALS));
    }

    private static Chamber after(Chamber chamber, ChamberCommand command) {
        Decision.Accepted<ChamberEvent> accepted = (Decision.Accepted<ChamberEvent>)
                ChamberDecider.decide(Optional.of(chamber), command, MATERIALS);
        return Chamber.evolve(Optional.of(chamber), accepted.events().getFirst());
    }

    private static ChamberCommand register(ChamberTerms terms, Signer signer) {
        return new ChamberCommand.RegisterChamber(CHAMBER, terms, ORIGIN, signer);
    }

    private static ChamberCommand over(SupplyId off, SupplyId on) {
        return new ChamberCommand.ChangeOver(
                CHAMBER, Optional.ofNullable(off), Optional.ofNullable(on), ORIGIN, FABRICATOR);
    }

    @Test
    void a_chamber_is_registered_once_by_process_control_or_a_lead() {
        assertThat(refusals(Optional.empty(), register(terms("stainless-steel"), CHEMIST))).isEmpty();
        assertThat(refusals(Optional.empty(), register(terms("stainless-steel"), LEAD))).isEmpty();
        assertThat(refusals(Optional.empty(), register(terms(), FABRICATOR))).containsExactly("chamber-role-missing");
        assertThat(refusals(Optional.of(chamber()), register(terms(), LEAD)))
                .containsExactly("chamber-already-registered");
        assertThat(refusals(Optional.empty(), over(ONE, TWO))).containsExactly("chamber-unknown");
    }

    @Test
    void the_list_of_a_chamber_cannot_have_what_reacts_or_gives_off_much_gas() {
        assertThat(refusals(Optional.empty(), register(terms("stainless-steel", "cotton"), LEAD))).isEmpty();
        assertThat(refusals(Optional.empty(), register(terms("pvc", "paper", "carbon-steel", "cheese"), LEAD)))
                .containsExactly("material-never-permitted", "material-unknown", "material-never-permitted",
                        "material-never-permitted");
    }

    @Test
    void changed_terms_hold_and_need_a_reason() {
        Chamber changed = after(chamber(), new ChamberCommand.ChangeTerms(
                CHAMBER, terms("cotton"), "cotton gloves, dried", ORIGIN, CHEMIST));
        assertThat(changed.terms().permittedMaterials()).containsExactly("cotton");
        assertThatThrownBy(() -> new ChamberCommand.ChangeTerms(CHAMBER, terms(), " ", ORIGIN, CHEMIST))
                .hasMessageContaining("reason");
    }

    @Test
    void a_change_over_takes_one_off_and_puts_another_on() {
        assertThat(after(chamber(ONE, TWO), over(ONE, THREE)).connected()).containsExactly(TWO, THREE);
        assertThat(after(chamber(ONE), over(null, TWO)).connected()).containsExactly(ONE, TWO);
        assertThat(after(chamber(ONE), over(ONE, null)).connected()).isEmpty();
    }

    @Test
    void what_a_manifold_cannot_do_is_refused() {
        assertThat(refusals(Optional.of(chamber(ONE, TWO)), over(null, THREE))).containsExactly("manifold-full");
        assertThat(refusals(Optional.of(chamber(ONE)), over(TWO, THREE)))
                .containsExactly("argon-not-connected-here");
        assertThat(refusals(Optional.of(chamber(ONE, TWO)), over(ONE, TWO)))
                .containsExactly("argon-already-connected");
        assertThat(refusals(Optional.of(chamber(ONE)), over(null, null))).containsExactly("nothing-to-change-over");
        assertThat(refusals(Optional.of(chamber(ONE)), new ChamberCommand.ChangeOver(
                CHAMBER, Optional.of(ONE), Optional.empty(), ORIGIN, INSPECTOR)))
                .containsExactly("chamber-role-missing");
    }

    @Test
    void a_leak_test_is_kept_and_a_leak_below_zero_is_none() {
        Chamber tested = after(chamber(), new ChamberCommand.RecordLeak(
                CHAMBER, decimal("0.0004"), Optional.of(decimal("0.8")), "fit of the purge", ORIGIN, CHEMIST));
        assertThat(tested.leakLitresPerMinute()).isEqualByComparingTo("0.0004");
        assertThat(tested.mixingEfficiency()).isEqualByComparingTo("0.8");
        assertThat(chamber().mixingEfficiency()).isEqualByComparingTo("1");
        assertThat(chamber().leakLitresPerMinute()).isEqualByComparingTo("0");
        assertThatThrownBy(() -> new ChamberCommand.RecordLeak(
                CHAMBER, decimal("-1"), Optional.empty(), "how", ORIGIN, CHEMIST))
                .hasMessageContaining("leak");
    }

    @Test
    void a_session_s_argon_is_counted_once() {
        ChamberCommand note = new ChamberCommand.NoteArgonUsed(CHAMBER, new ConsumptionReport(
                new SessionId("CS-0012"), decimal("9000"), Optional.of(decimal("9400")), Optional.empty(), 0,
                List.of()), ORIGIN);
        assertThat(refusals(Optional.of(after(chamber(), note)), note)).containsExactly("argon-use-noted-already");
    }

    @Test
    void numbers_that_no_chamber_has_are_refused_where_they_are_made() {
        assertThatThrownBy(() -> new ChamberLimits(Gear.limit("50"), Gear.limit("30"), Gear.limit("40"),
                Duration.ZERO, Duration.ofSeconds(1), Duration.ofMinutes(1), "x")).hasMessageContaining("excursion");
        assertThatThrownBy(() -> new Manifold(2, decimal("80"), Optional.of(decimal("69")), decimal("5"), "x"))
                .hasMessageContaining("retiring pressure");
        assertThatThrownBy(() -> LockMethod.vacuumCycles(decimal("1"))).hasMessageContaining("lock");
        assertThatThrownBy(() -> new CitedLimit(decimal("30"), "")).hasMessageContaining("source");
        assertThat(refusals(Optional.empty(), new ChamberCommand.RegisterChamber(
                Gear.LOCK, terms(), ORIGIN, LEAD))).containsExactly("lock-is-chamber");
    }
}
