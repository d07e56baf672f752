package brightseam.chamber;

import static brightseam.chamber.Gear.BUNDLE;
import static brightseam.chamber.Gear.DEWAR;
import static brightseam.chamber.Gear.at;
import static brightseam.chamber.Gear.bundle;
import static brightseam.chamber.Gear.chamber;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ArgonOutlookTest {

    private static ArgonOutlook outlook(Chamber chamber, String connectedBar, String standbyPercent) {
        Manifold manifold = chamber.terms().manifold();
        List<ArgonLeft> left = new ArrayList<>();
        ArgonLeft.of(bundle(connectedBar), manifold, true, at(0)).ifPresent(left::add);
        ArgonLeft.of(Gear.dewar(standbyPercent), manifold, false, at(0)).ifPresent(left::add);
        ArgonNeed need = ArgonNeed.of(chamber, Gear.PURE, Duration.ofHours(3), 2);
        return ArgonOutlook.of(chamber, left, need, at(0).wall());
    }

    @Test
    void a_full_bundle_is_enough() {
        ArgonOutlook outlook = outlook(chamber(BUNDLE), "200", "5");
        assertThat(outlook.objections()).isEmpty();
        assertThat(outlook.changeOverAt()).isEmpty();
        assertThat(outlook.lastsHolding().toMinutes())
                .isCloseTo(Math.round(outlook.connectedStandardLitres() / (8 * 288.15 / 293.15)), within(2L));
    }

    @Test
    void what_covers_the_purge_alone_needs_something_that_stands_by() {
        ArgonOutlook covered = outlook(chamber(BUNDLE), "18", "40");
        assertThat(covered.objections()).isEmpty();
        assertThat(covered.changeOverAt()).isPresent();
        assertThat(outlook(chamber(BUNDLE), "18", "5").objections()).singleElement()
                .isInstanceOfSatisfying(ChamberRefusal.ArgonTooLittle.class, little -> {
                    assertThat(little.neededStandardLitres()).isGreaterThan(little.purgeStandardLitres());
                    assertThat(little.connectedStandardLitres().add(little.missingStandardLitres()))
                            .isBetween(little.neededStandardLitres(),
                                    little.neededStandardLitres().add(Gear.decimal("2")));
                });
    }

    @Test
    void a_purge_is_never_begun_on_what_stands_by() {
        assertThat(outlook(chamber(BUNDLE), "12", "100").objections())
                .extracting(ChamberRefusal::code).containsExactly("argon-too-little");
    }

    @Test
    void without_argon_or_with_a_limit_out_of_reach_nothing_is_begun() {
        assertThat(outlook(chamber(), "200", "100").objections())
                .extracting(ChamberRefusal::code).containsExactly("no-argon-connected");
        assertThat(outlook(Gear.leaking(chamber(BUNDLE, DEWAR), "0.05"), "200", "100").objections())
                .extracting(ChamberRefusal::code).containsExactly("limit-out-of-reach");
    }
}
