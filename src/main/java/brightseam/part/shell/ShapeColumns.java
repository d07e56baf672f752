package brightseam.part.shell;

import brightseam.bath.Bore;
import brightseam.bath.Shape;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;

/** A shape as the columns of a row: those that it has, the others empty. */
final class ShapeColumns {

    private static final String[] NAMES = {
        "diameter_mm", "wall_mm", "length_mm", "width_mm", "thickness_mm", "bore", "outside_area_cm2",
        "inside_area_cm2", "volume_cm3"
    };

    private ShapeColumns() {}

    /** Every column but the part's number and weight, by name. */
    static Map<String, Object> of(Shape shape) {
        Map<String, Object> columns = new HashMap<>();
        for (String name : NAMES) {
            columns.put(name, null);
        }
        columns.putAll(switch (shape) {
            case Shape.Tube tube -> Map.of("shape", "TUBE", "diameter_mm", tube.outsideDiameterMillimetres(),
                    "wall_mm", tube.wallMillimetres(), "length_mm", tube.lengthMillimetres(),
                    "bore", tube.bore().name());
            case Shape.Bar bar -> Map.of("shape", "BAR", "diameter_mm", bar.diameterMillimetres(),
                    "length_mm", bar.lengthMillimetres());
            case Shape.Plate plate -> Map.of("shape", "PLATE", "length_mm", plate.lengthMillimetres(),
                    "width_mm", plate.widthMillimetres(), "thickness_mm", plate.thicknessMillimetres());
            case Shape.Fitting fitting -> Map.of("shape", "FITTING",
                    "outside_area_cm2", fitting.outsideAreaSquareCentimetres(),
                    "inside_area_cm2", fitting.insideAreaSquareCentimetres(),
                    "volume_cm3", fitting.volumeCubicCentimetres());
        });
        return columns;
    }

    /** The shape in {@code row}. */
    static Shape read(ResultSet row) throws SQLException {
        String shape = row.getString("shape");
        return switch (shape) {
            case "TUBE" -> new Shape.Tube(row.getDouble("diameter_mm"), row.getDouble("wall_mm"),
                    row.getDouble("length_mm"), Bore.valueOf(row.getString("bore")));
            case "BAR" -> new Shape.Bar(row.getDouble("diameter_mm"), row.getDouble("length_mm"));
            case "PLATE" -> new Shape.Plate(
                    row.getDouble("length_mm"), row.getDouble("width_mm"), row.getDouble("thickness_mm"));
            case "FITTING" -> new Shape.Fitting(row.getDouble("outside_area_cm2"), row.getDouble("inside_area_cm2"),
                    row.getDouble("volume_cm3"));
            default -> throw new IllegalStateException("no shape " + shape);
        };
    }
}
