package brightseam.part;

import static brightseam.kernel.Samples.ORIGIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brightseam.bath.Bore;
import brightseam.bath.Density;
import brightseam.bath.Shape;
import brightseam.kernel.Decision;
import brightseam.kernel.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PartDeciderTest {

    private static final PartNumber LEG = new PartNumber("LF-101");
    private static final Shape.Tube TUBE = new Shape.Tube(38.1, 1.65, 900, Bore.VENTED);
    private static final Shape.Bar BAR = new Shape.Bar(20, 100);
    private static final PartEvent TUBE_GIVEN = new PartEvent.TubeGiven(ORIGIN, LEG, TUBE, Optional.empty());

    @Test
    void a_shape_is_given_and_replaced_by_the_next() {
        assertThat(PartDecider.decide(Optional.empty(), give(TUBE, Optional.empty())))
                .isEqualTo(Decision.accepted(List.of(TUBE_GIVEN)));
        Optional<Part> known = Optional.of(Part.evolve(Optional.empty(), TUBE_GIVEN));
        assertThat(PartDecider.decide(known, give(TUBE, Optional.empty()))).isEqualTo(Decision.accepted(List.of()));
        PartEvent bar = new PartEvent.BarGiven(ORIGIN, LEG, BAR, Optional.of(141.0));
        assertThat(PartDecider.decide(known, give(BAR, Optional.of(141.0))))
                .isEqualTo(Decision.accepted(List.of(bar)));
        assertThat(Part.evolve(known, bar)).isEqualTo(new Part(LEG, BAR, Optional.of(141.0)));
    }

    /** A bar of 20 mm by 100 mm is 31.4 cm3 of titanium, about 141 g. */
    @Test
    void a_weight_that_cannot_be_that_shape_is_refused() {
        assertThat(PartDecider.decide(Optional.empty(), give(BAR, Optional.of(0.141))))
                .isEqualTo(Decision.refused(List.of(new PartRefusal.WeightDoesNotFit(
                        LEG, new BigDecimal("0.141"), new BigDecimal("141")))));
        assertThat(PartDecider.decide(Optional.empty(), give(BAR, Optional.of(283.0))))
                .isInstanceOf(Decision.Refused.class);
        assertThat(PartDecider.decide(Optional.empty(), give(BAR, Optional.of(281.0))))
                .isInstanceOf(Decision.Accepted.class);
        assertThatThrownBy(() -> give(BAR, Optional.of(Double.NaN))).hasMessageContaining("weight");
    }

    @Test
    void a_lot_has_the_area_of_its_pieces_and_the_mass_of_a_scale_or_of_its_metal() {
        Part tube = Part.evolve(Optional.empty(), TUBE_GIVEN);
        assertThat(tube.wettedArea(6).totalSquareMetres()).isCloseTo(6 * 0.2065, within(0.0005));
        Optional<Density> grade9 = Density.ofGrade("9");
        assertThat(tube.massKilograms(6, grade9).orElseThrow()).isCloseTo(6 * 0.7618, within(0.001));
        assertThat(tube.massKilograms(6, Optional.empty())).isEmpty();
        Part weighed = new Part(LEG, TUBE, Optional.of(750.0));
        assertThat(weighed.massKilograms(6, grade9)).contains(4.5);
        assertThat(weighed.massKilograms(6, Optional.empty())).contains(4.5);
    }

    private static PartCommand give(Shape shape, Optional<Double> weighedGrams) {
        return new PartCommand.GiveShape(LEG, shape, weighedGrams, ORIGIN);
    }
}
