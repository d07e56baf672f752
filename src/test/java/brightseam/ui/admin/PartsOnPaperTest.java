package brightseam.ui.admin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.bath.Bore;
import brightseam.bath.Shape;
import brightseam.bins.Capacity;
import brightseam.kernel.KitId;
import brightseam.kernel.PartNumber;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.part.Part;
import brightseam.ui.admin.ShapeEntry.Field;
import brightseam.ui.desk.CapacityWords;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PartsOnPaperTest {

    @Test
    void keyed_in_measures_make_a_shape() {
        Map<Field, String> texts = Map.of(Field.DIAMETER, "38.1", Field.WALL, " 1.65 ", Field.LENGTH, "900",
                Field.WIDTH, "60", Field.THICKNESS, "3.2", Field.OUTSIDE_AREA, "210", Field.INSIDE_AREA, "0",
                Field.VOLUME, "128");
        assertThat(ShapeEntry.TUBE.shape(texts)).isEqualTo(new Shape.Tube(38.1, 1.65, 900, Bore.VENTED));
        assertThat(ShapeEntry.CLOSED_TUBE.shape(texts)).isEqualTo(new Shape.Tube(38.1, 1.65, 900, Bore.CLOSED));
        assertThat(ShapeEntry.BAR.shape(texts)).isEqualTo(new Shape.Bar(38.1, 900));
        assertThat(ShapeEntry.PLATE.shape(texts)).isEqualTo(new Shape.Plate(900, 60, 3.2));
        assertThat(ShapeEntry.FITTING.shape(texts)).isEqualTo(new Shape.Fitting(210, 0, 128));
    }

    @Test
    void what_a_shape_is_keyed_in_with_makes_it_again() {
        List<Shape> shapes = List.of(new Shape.Tube(38.1, 1.65, 900, Bore.VENTED),
                new Shape.Tube(25.4, 1.25, 60, Bore.CLOSED), new Shape.Bar(1.6, 914), new Shape.Plate(120, 60, 3.2),
                new Shape.Fitting(210, 64.5, 128));
        assertThat(shapes).allSatisfy(shape ->
                assertThat(ShapeEntry.of(shape).shape(ShapeEntry.texts(shape))).isEqualTo(shape));
    }

    @Test
    void what_is_no_number_is_told_by_the_name_of_its_field() {
        for (String wrong : List.of("", "38,1", "-3", "1e9", "NaN", "38.1 mm")) {
            assertThatThrownBy(() -> ShapeEntry.BAR.shape(Map.of(Field.DIAMETER, wrong, Field.LENGTH, "1")))
                    .as(wrong).hasMessageContaining("Outside diameter, mm");
        }
        assertThatThrownBy(() -> ShapeEntry.weight("heavy")).hasMessageContaining("weight of one piece");
        assertThat(ShapeEntry.weight(" ")).isEmpty();
        assertThat(ShapeEntry.weight("8.1")).contains(8.1);
    }

    @Test
    void shapes_are_told_with_their_units() {
        assertThat(ShapeEntry.words(new Shape.Tube(38.1, 1.65, 900, Bore.VENTED)))
                .isEqualTo("tube 38.1 x 1.65\u00a0mm, 900\u00a0mm long, open");
        assertThat(ShapeEntry.words(new Shape.Bar(1.6, 914))).isEqualTo("bar 1.6\u00a0mm, 914\u00a0mm long");
        assertThat(ShapeEntry.words(new Shape.Plate(120, 60, 3.2))).isEqualTo("plate 120 x 60 x 3.2\u00a0mm");
        assertThat(ShapeEntry.words(new Shape.Fitting(210, 64, 128))).isEqualTo("fitting, 128\u00a0cm³ by its drawing");
    }

    @Test
    void parts_of_open_kits_without_a_shape_come_first() {
        Kit kit = new Kit(new KitId("K-31"), "Legs", Optional.empty(), List.of(line(1, "LF-102", "Lower leg"),
                line(2, "LF-101", "Upper leg")), false);
        List<PartLine> lines = PartLine.of(List.of(kit), List.of(
                new Part(new PartNumber("LF-090"), new Shape.Bar(20, 100), Optional.of(140.0)),
                new Part(new PartNumber("LF-101"), new Shape.Tube(38.1, 1.65, 900, Bore.VENTED), Optional.empty())));
        assertThat(lines).extracting(PartLine::number).containsExactly("LF-102", "LF-090", "LF-101");
        assertThat(lines).extracting(PartLine::description).containsExactly("Lower leg", "", "Upper leg");
        assertThat(lines).extracting(PartLine::shape).containsExactly(
                "NO SHAPE YET", "bar 20\u00a0mm, 100\u00a0mm long", "tube 38.1 x 1.65\u00a0mm, 900\u00a0mm long, open");
        assertThat(lines).extracting(PartLine::mass).containsExactly("", "140 g weighed", "762 g in grade 9");
        assertThat(lines).extracting(PartLine::area)
                .containsExactly("", "69\u00a0cm² outside", "1081\u00a0cm² outside, 984\u00a0cm² inside");
    }

    @Test
    void a_capacity_is_told_in_one_line() {
        Capacity capacity = new Capacity(Optional.of(4), Optional.of(1), Optional.of(new BigDecimal("1.2")),
                Optional.of(new BigDecimal("15")));
        assertThat(CapacityWords.of(capacity)).isEqualTo("at most 4 travellers, 1 piece, 1.2\u00a0m², 15\u00a0kg");
        assertThat(CapacityWords.of(Capacity.ofTravellers(Optional.empty()))).isEqualTo("no limit set");
    }

    private static KitLine line(int number, String part, String description) {
        return new KitLine(number, part, description, "A", 6, "TUBE", Optional.empty());
    }
}
