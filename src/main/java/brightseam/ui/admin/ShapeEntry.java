package brightseam.ui.admin;

import brightseam.bath.Bore;
import brightseam.bath.Shape;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Shapes as people key them in and read them: which measures a kind of shape has, and in which units. */
enum ShapeEntry {
    TUBE("Tube, open or vented", Field.DIAMETER, Field.WALL, Field.LENGTH),
    CLOSED_TUBE("Tube, plugged or capped", Field.DIAMETER, Field.WALL, Field.LENGTH),
    BAR("Round bar", Field.DIAMETER, Field.LENGTH),
    PLATE("Plate", Field.LENGTH, Field.WIDTH, Field.THICKNESS),
    FITTING("Fitting, by its drawing", Field.OUTSIDE_AREA, Field.INSIDE_AREA, Field.VOLUME);

    /** One measure, with its unit in its label. */
    enum Field {
        DIAMETER("Outside diameter, mm"),
        WALL("Wall, mm"),
        LENGTH("Length, mm"),
        WIDTH("Width, mm"),
        THICKNESS("Thickness, mm"),
        OUTSIDE_AREA("Outside area, cm²"),
        INSIDE_AREA("Inside area, cm² (0: none)"),
        VOLUME("Volume of metal, cm³");

        private final String label;

        Field(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    private final String label;
    private final List<Field> fields;

    ShapeEntry(String label, Field... fields) {
        this.label = label;
        this.fields = List.of(fields);
    }

    String label() {
        return label;
    }

    List<Field> fields() {
        return fields;
    }

    /**
     * The shape that {@code texts} make.
     *
     * @throws IllegalArgumentException where one is no number, or no such shape can be
     */
    Shape shape(Map<Field, String> texts) {
        double[] of = fields.stream()
                .mapToDouble(field -> KeyedNumber.read(field.label(), texts.getOrDefault(field, "")).doubleValue())
                .toArray();
        return switch (this) {
            case TUBE -> new Shape.Tube(of[0], of[1], of[2], Bore.VENTED);
            case CLOSED_TUBE -> new Shape.Tube(of[0], of[1], of[2], Bore.CLOSED);
            case BAR -> new Shape.Bar(of[0], of[1]);
            case PLATE -> new Shape.Plate(of[0], of[1], of[2]);
            case FITTING -> new Shape.Fitting(of[0], of[1], of[2]);
        };
    }

    /** Which of these makes {@code shape}. */
    static ShapeEntry of(Shape shape) {
        return switch (shape) {
            case Shape.Tube tube -> tube.bore() == Bore.VENTED ? TUBE : CLOSED_TUBE;
            case Shape.Bar ignored -> BAR;
            case Shape.Plate ignored -> PLATE;
            case Shape.Fitting ignored -> FITTING;
        };
    }

    /** What to key in for {@code shape}: the inverse of {@link #shape}. */
    static Map<Field, String> texts(Shape shape) {
        List<Field> fields = of(shape).fields();
        double[] measures = switch (shape) {
            case Shape.Tube tube -> new double[] {
                tube.outsideDiameterMillimetres(), tube.wallMillimetres(), tube.lengthMillimetres()
            };
            case Shape.Bar bar -> new double[] {bar.diameterMillimetres(), bar.lengthMillimetres()};
            case Shape.Plate plate -> new double[] {
                plate.lengthMillimetres(), plate.widthMillimetres(), plate.thicknessMillimetres()
            };
            case Shape.Fitting fitting -> new double[] {
                fitting.outsideAreaSquareCentimetres(), fitting.insideAreaSquareCentimetres(),
                fitting.volumeCubicCentimetres()
            };
        };
        return IntStream.range(0, measures.length).boxed()
                .collect(Collectors.toMap(fields::get, place -> plain(measures[place])));
    }

    /** The weight in {@code text}; empty for an empty text. */
    static Optional<Double> weight(String text) {
        return KeyedNumber.readIfAny("weight of one piece, g", text).map(BigDecimal::doubleValue);
    }

    /** {@code tube 38.1 x 1.65 mm, 900 mm long, open}. */
    static String words(Shape shape) {
        return switch (shape) {
            case Shape.Tube tube -> "tube " + plain(tube.outsideDiameterMillimetres()) + " x "
                    + with(tube.wallMillimetres(), "mm") + ", " + with(tube.lengthMillimetres(), "mm") + " long, "
                    + (tube.bore() == Bore.VENTED ? "open" : "closed");
            case Shape.Bar bar -> "bar " + with(bar.diameterMillimetres(), "mm") + ", "
                    + with(bar.lengthMillimetres(), "mm") + " long";
            case Shape.Plate plate -> "plate " + plain(plate.lengthMillimetres()) + " x "
                    + plain(plate.widthMillimetres()) + " x " + with(plate.thicknessMillimetres(), "mm");
            case Shape.Fitting fitting ->
                "fitting, " + with(fitting.volumeCubicCentimetres(), "cm³") + " by its drawing";
        };
    }

    private static String plain(double measure) {
        return Words.plain(measure);
    }

    private static String with(double measure, String unit) {
        return Words.quantity(BigDecimal.valueOf(measure).stripTrailingZeros(), unit);
    }
}
