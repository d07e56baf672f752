package brightseam.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;

class ShapeTest {

    private static final double MILLIMETRES_PER_INCH = 25.4;
    private static final double GRAMS_PER_POUND = 453.59237;

    /** A mill's data sheet prints 0.21 lb/ft for Ti-3Al-2.5V tube of 1 in by 0.035 in. */
    @Test
    void a_tube_weighs_what_a_mill_prints() {
        Shape foot = new Shape.Tube(MILLIMETRES_PER_INCH, 0.035 * MILLIMETRES_PER_INCH, 12 * MILLIMETRES_PER_INCH,
                Bore.VENTED);
        double pounds = 1000 * foot.massKilograms(Density.ofGrade("9").orElseThrow()) / GRAMS_PER_POUND;
        assertThat(pounds).isCloseTo(0.206, within(0.0005));
        assertThat(Math.round(100 * pounds)).isEqualTo(21);
    }

    @Test
    void grades_have_the_densities_that_are_remembered_in_pounds_a_cubic_inch() {
        double perPound = GRAMS_PER_POUND / Math.pow(MILLIMETRES_PER_INCH / 10, 3);
        assertThat(Density.grades()).containsExactly("2", "23", "5", "9");
        assertThat(Density.ofGrade("2").orElseThrow().gramsPerCubicCentimetre())
                .isCloseTo(0.163 * perPound, within(0.005));
        assertThat(Density.ofGrade("9").orElseThrow().gramsPerCubicCentimetre())
                .isCloseTo(0.162 * perPound, within(0.005));
        assertThat(Density.ofGrade("23").orElseThrow().gramsPerCubicCentimetre())
                .isCloseTo(0.160 * perPound, within(0.005));
        assertThat(Density.ofGrade("304")).isEmpty();
    }

    @Test
    void a_mesh_of_a_tube_nears_its_area_and_volume_as_the_mesh_gets_finer() {
        Random random = new Random(3);
        for (int round = 0; round < 200; round++) {
            double outside = 5 + 95 * random.nextDouble();
            double wall = outside * (0.02 + 0.4 * random.nextDouble());
            Shape.Tube tube = new Shape.Tube(outside, wall, 1 + 2000 * random.nextDouble(), Bore.VENTED);
            double coarse = worst(tube, TubeMesh.of(tube, 64));
            double fine = worst(tube, TubeMesh.of(tube, 1024));
            assertThat(fine).isLessThan(2e-5).isLessThan(coarse / 100);
        }
    }

    /** Areas and volume of a bar and a plate by integrating along an axis, not by their formulae. */
    @Test
    void a_bar_and_a_plate_agree_with_integration() {
        Shape bar = new Shape.Bar(25, 100);
        int slices = 200_000;
        double half = 12.5;
        double volume = 0;
        double mantle = 0;
        double face = 0;
        for (int i = 0; i < slices; i++) {
            double x = -half + (i + 0.5) * 2 * half / slices;
            double chord = 2 * Math.sqrt(half * half - x * x);
            face += chord * 2 * half / slices;
            mantle += 2 * half / (chord / 2) * 100 * 2 * half / slices;
        }
        volume = face * 100;
        assertThat(bar.volumeCubicMillimetres()).isCloseTo(volume, within(1.0));
        assertThat(bar.outsideAreaSquareMillimetres()).isCloseTo(mantle + 2 * face, within(40.0));
        Shape plate = new Shape.Plate(30, 20, 2);
        assertThat(plate.outsideAreaSquareMillimetres()).isEqualTo(cubes(30, 20, 2, true));
        assertThat(plate.volumeCubicMillimetres()).isEqualTo(cubes(30, 20, 2, false));
    }

    @Test
    void a_closed_tube_wets_only_its_outside_and_weighs_the_same() {
        Shape vented = new Shape.Tube(38.1, 1.65, 900, Bore.VENTED);
        Shape closed = new Shape.Tube(38.1, 1.65, 900, Bore.CLOSED);
        assertThat(closed.wettedArea().insideSquareMetres()).isZero();
        assertThat(closed.wettedArea().outsideSquareMetres()).isEqualTo(vented.wettedArea().outsideSquareMetres());
        assertThat(vented.wettedArea().totalSquareMetres()).isCloseTo((206_119 + 378) / 1e6, within(1e-6));
        assertThat(closed.massKilograms(Density.ofGrade("9").orElseThrow()))
                .isEqualTo(vented.massKilograms(Density.ofGrade("9").orElseThrow()));
    }

    @Test
    void a_tube_and_its_bore_fill_a_bar() {
        Random random = new Random(5);
        for (int round = 0; round < 1000; round++) {
            double outside = 1 + 99 * random.nextDouble();
            double length = 1 + 3000 * random.nextDouble();
            Shape.Tube tube = new Shape.Tube(outside, outside * 0.49 * (0.01 + random.nextDouble()) / 1.01, length,
                    Bore.VENTED);
            double bore = new Shape.Bar(tube.insideDiameterMillimetres(), length).volumeCubicMillimetres();
            double bar = new Shape.Bar(outside, length).volumeCubicMillimetres();
            assertThat(tube.volumeCubicMillimetres() + bore).isCloseTo(bar, within(1e-9 * bar));
        }
    }

    @Test
    void areas_of_pieces_add_up() {
        WettedArea one = new Shape.Fitting(120, 30, 40).wettedArea();
        assertThat(one.totalSquareMetres()).isCloseTo(0.015, within(1e-12));
        assertThat(one.times(3).plus(one).totalSquareMetres()).isCloseTo(0.06, within(1e-12));
    }

    @Test
    void shapes_that_cannot_be_are_refused() {
        List<Callable<?>> impossible = List.of(
                () -> new Shape.Tube(20, 10, 100, Bore.VENTED),
                () -> new Shape.Tube(20, 11, 100, Bore.VENTED),
                () -> new Shape.Tube(Double.NaN, 1, 100, Bore.VENTED),
                () -> new Shape.Tube(20, Double.NaN, 100, Bore.VENTED),
                () -> new Shape.Tube(20, 0, 100, Bore.VENTED),
                () -> new Shape.Tube(20, 1, -100, Bore.VENTED),
                () -> new Shape.Tube(20, 1, Double.POSITIVE_INFINITY, Bore.VENTED),
                () -> new Shape.Bar(0, 1),
                () -> new Shape.Bar(1, 20_001),
                () -> new Shape.Plate(1, 1, Double.NaN),
                () -> new Shape.Plate(-1, 1, 1),
                () -> new Shape.Fitting(6, -1, 1),
                () -> new Shape.Fitting(4.83, 0, 1),
                () -> new Shape.Fitting(1e7, 0, 1),
                () -> new Density(45, "a slip of the point"),
                () -> new WettedArea(Double.NaN, 0));
        impossible.forEach(make ->
                assertThatThrownBy(make::call).isInstanceOf(IllegalArgumentException.class));
        assertThat(new Shape.Fitting(4.84, 0, 1).volumeCubicMillimetres()).isEqualTo(1000);
    }

    /** Counts millimetre cubes, or their faces that have no neighbour. */
    private static double cubes(int length, int width, int height, boolean faces) {
        double count = 0;
        for (int x = 0; x < length; x++) {
            for (int y = 0; y < width; y++) {
                for (int z = 0; z < height; z++) {
                    count += faces ? open(x, length) + open(y, width) + open(z, height) : 1;
                }
            }
        }
        return count;
    }

    private static int open(int place, int length) {
        return (place == 0 ? 1 : 0) + (place == length - 1 ? 1 : 0);
    }

    /** The largest relative difference between a tube and a mesh of it. */
    private static double worst(Shape.Tube tube, TubeMesh mesh) {
        return Math.max(Math.abs(mesh.volume() / tube.volumeCubicMillimetres() - 1), Math.max(
                Math.abs(mesh.outside() / tube.outsideAreaSquareMillimetres() - 1),
                Math.abs(mesh.inside() / tube.insideAreaSquareMillimetres() - 1)));
    }
}
