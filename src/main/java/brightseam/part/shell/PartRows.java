package brightseam.part.shell;

import brightseam.kernel.PartNumber;
import brightseam.ledger.shell.StateRows;
import brightseam.part.Part;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code part_row}. */
final class PartRows implements StateRows<Part> {

    private static final String SELECT = """
            select part_number, shape, diameter_mm, wall_mm, length_mm, width_mm, thickness_mm, bore,
                   outside_area_cm2, inside_area_cm2, volume_cm3, weighed_g
            from part_row
            """;

    private static final String INSERT = """
            insert into part_row (part_number, shape, diameter_mm, wall_mm, length_mm, width_mm, thickness_mm, bore,
                                  outside_area_cm2, inside_area_cm2, volume_cm3, weighed_g)
            values (:part, :shape, :diameter_mm, :wall_mm, :length_mm, :width_mm, :thickness_mm, :bore,
                    :outside_area_cm2, :inside_area_cm2, :volume_cm3, :weighed)
            """;

    private static final String UPDATE = """
            update part_row
            set shape = :shape, diameter_mm = :diameter_mm, wall_mm = :wall_mm, length_mm = :length_mm,
                width_mm = :width_mm, thickness_mm = :thickness_mm, bore = :bore,
                outside_area_cm2 = :outside_area_cm2, inside_area_cm2 = :inside_area_cm2, volume_cm3 = :volume_cm3,
                weighed_g = :weighed
            where part_number = :part
            """;

    private final JdbcClient jdbc;

    PartRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("part_row");
    }

    @Override
    public Optional<Part> find(String identity) {
        return jdbc.sql(SELECT + "where part_number = :part").param("part", identity).query(PartRows::part).optional();
    }

    List<Part> all() {
        return jdbc.sql(SELECT + "order by part_number").query(PartRows::part).list();
    }

    @Override
    public void put(Optional<Part> before, Part after, long position) {
        jdbc.sql(before.isPresent() ? UPDATE : INSERT)
                .param("part", after.number().value())
                .params(ShapeColumns.of(after.shape()))
                .param("weighed", after.weighedGrams().orElse(null))
                .update();
    }

    private static Part part(ResultSet row, int number) throws SQLException {
        return new Part(
                new PartNumber(row.getString("part_number")),
                ShapeColumns.read(row),
                Optional.ofNullable(row.getObject("weighed_g", Double.class)));
    }
}
