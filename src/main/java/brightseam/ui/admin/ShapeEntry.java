package brightseam.ui.admin;

import brightseam.bath.Bore;
import brightseam.bath.Shape;
import brightseam.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

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

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,8}(\\.[0-9]{1,6})?");

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
                .mapToDouble(field -> number(field.label(), texts.getOrDefault(field, ""))).toArray();
        return switch (this) {
            case TUBE -> new Shape.Tube(of[0], of[1], of[2], Bore.VENTED);
            case CLOSED_TUBE -> new Shape.Tube(of[0], of[1], of[2], Bore.CLOSED);
            case BAR -> new Shape.Bar(of[0], of[1]);
            case PLATE -> new Shape.Plate(of[0], of[1], of[2]);
            case FITTING -> new Shape.Fitting(of[0], of[1], of[2]);
        };
    }

    /** The weight in {@code text}; empty for an empty text. */
    static Optional<Double> weight(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(number("weight of one piece, g", text));
    }

    /** {@code tube 38.1 x 1.65 mm, 900 mm long, open}. */
    static String words(Shape shape) {
        return switch (shape) {
            case Shape.Tube tube -> "tube " + plain(tube.outsideDiameterMillimetres()) + " x "
                    + plain(tube.wallMillimetres()) + " mm, " + plain(tube.lengthMillimetres()) + " mm long, "
                    + (tube.bore() == Bore.VENTED ? "open" : "closed");
            case Shape.Bar bar -> "bar " + plain(bar.diameterMillimetres()) + " mm, "
                    + plain(bar.lengthMillimetres()) + " mm long";
            case Shape.Plate plate -> "plate " + plain(plate.lengthMillimetres()) + " x "
                    + plain(plate.widthMillimetres()) + " x " + plain(plate.thicknessMillimetres()) + " mm";
            case Shape.Fitting fitting -> "fitting, " + plain(fitting.volumeCubicCentimetres()) + " cm³ by its drawing";
        };
    }

    private static double number(String what, String text) {
        if (!NUMBER.matcher(text.strip()).matches()) {
            throw new IllegalArgumentException(what + ": a number such as 38.1, with a point");
        }
        return Double.parseDouble(text.strip());
    }

    private static String plain(double measure) {
        return Words.plain(measure);
    }
}
