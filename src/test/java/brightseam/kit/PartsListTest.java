package brightseam.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.HeatId;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartsListTest {

    private static final String HEADER = "part_number,description,drawing_revision,quantity,procedure,heat";
    private static final KitLine LEG =
            new KitLine(1, "LF-100-01", "Leg", "B", 4, "TUBE", Optional.of(new HeatId("H-9T3381")));

    @Test
    void the_example_list_is_read_whole() throws IOException {
        List<KitLine> lines = accepted(resource("/shared/parts-list-example.csv"));
        assertEquals(8, lines.size());
        assertEquals(
                new KitLine(7, "LF-110-03", "Release bail lug, \"long\" type", "A", 2, "FITTING", Optional.empty()),
                lines.get(6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bad-cells", "bad-headers", "bad-quotes", "formulas", "short-rows"})
    void a_bad_list_is_rejected_with_the_expected_problems(String name) throws IOException {
        String problems = rejected(resource("/parts-lists/" + name + ".csv")).stream()
                .map(p -> "%d:%d '%s' expected %s%n".formatted(p.line(), p.column(), p.found(), p.expected()))
                .collect(Collectors.joining());
        assertEquals(resource("/parts-lists/" + name + ".expected.txt"), problems);
    }

    @Test
    void byte_order_mark_line_ends_semicolons_and_order_of_columns_do_not_matter() {
        String row = "LF-100-01,Leg,B,4,TUBE,H-9T3381";
        assertEquals(List.of(LEG), accepted(HEADER + "\n" + row));
        assertEquals(List.of(LEG), accepted("\uFEFF" + HEADER + "\r\n" + row + "\r\n\r\n"));
        assertEquals(List.of(LEG), accepted(HEADER + "\r" + row + "\r"));
        assertEquals(List.of(LEG), accepted((HEADER + "\n" + row).replace(',', ';')));
        assertEquals(
                List.of(LEG),
                accepted("HEAT, quantity ,procedure,description,drawing_revision,part_number\n"
                        + "H-9T3381, 4 ,\"TUBE\",Leg,B,\"LF-100-01\""));
    }

    @Test
    void lines_are_numbered_from_where_the_kit_ends() {
        PartsList list = PartsList.parse(HEADER + "\nLF-100-01,Leg,B,4,TUBE,\n", 12);
        assertEquals(12, assertInstanceOf(PartsList.Accepted.class, list).lines().getFirst().lineNumber());
    }

    @Test
    void a_list_without_lines_is_rejected() {
        assertEquals(1, rejected("").size());
        assertEquals("at least one line below the column names", rejected(HEADER + "\r\n").getFirst().expected());
    }

    @Test
    void lists_above_the_limits_are_rejected_with_one_problem() {
        String row = "\nLF-100-01,Leg,B,4,TUBE,";
        assertEquals(200, accepted(HEADER + row.repeat(200)).size());
        List<ListProblem> tooLong = rejected(HEADER + row.repeat(201));
        assertEquals(List.of(new ListProblem(202, 1, "201 lines", "at most 200 lines")), tooLong);
        List<ListProblem> huge = rejected("x".repeat(PartsList.CHARACTERS_MAX + 1));
        assertEquals(List.of(new ListProblem(1, 1, "262145 characters", "at most 262144 characters")), huge);
    }

    @Test
    void no_more_than_a_hundred_problems_are_told() {
        assertEquals(100, rejected(HEADER + "\nx,,?,no,x,x".repeat(150)).size());
    }

    @Test
    void characters_that_cannot_be_seen_are_refused_and_shown_as_points() {
        for (String hidden : List.of("\u0000", "\u202E", "\u200B", "\uFFFD", "\u2028", "\uD800", "\u001B", "\uE000")) {
            List<ListProblem> problems = rejected(HEADER + "\nLF-100-01,Le" + hidden + "g,B,4,TUBE,");
            assertEquals("Le\u00B7g", problems.getFirst().found());
        }
        List<ListProblem> inLabel = rejected(HEADER + "\nLF\u0410-1,Leg,B,\u0664,TUBE,");
        assertEquals(List.of(1, 4), inLabel.stream().map(ListProblem::column).toList());
    }

    @Test
    void a_long_cell_is_shown_in_part() {
        String found = rejected(HEADER + "\nLF-1," + "a".repeat(9_000) + ",B,4,TUBE,").getFirst().found();
        assertEquals("a".repeat(60) + "\u2026", found);
    }

    @Test
    void whatever_is_read_nothing_is_thrown_and_nothing_hidden_or_executable_comes_out() {
        String alphabet = "\",;\r\n \t=+-@'A1ab_\u0000\uFEFF\uD83D\uDE00\u202E";
        String good = HEADER + "\nLF-100-01,Leg,B,4,TUBE,H-9T3381\nLF-100-02,\"Ring, \"\"A\"\"\",A,6,TUBE,\n";
        int rejections = 0;
        for (int seed = 0; seed < 4_000; seed++) {
            PartsList list = PartsList.parse(spoiled(good, alphabet, new Random(seed)));
            if (list instanceof PartsList.Rejected rejected) {
                rejections++;
                for (ListProblem problem : rejected.problems()) {
                    assertTrue(problem.line() >= 1 && problem.column() >= 1, "seed " + seed);
                    assertFalse(problem.found().matches("(?s)[=+\\-@].*"), "seed " + seed);
                    assertTrue(problem.found().codePoints().allMatch(Visible::isVisible), "seed " + seed);
                }
            }
        }
        assertTrue(rejections > 2_000 && rejections < 4_000, rejections + " rejections");
    }

    @Test
    void a_written_list_is_read_back_the_same() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<KitLine> lines = IntStream.rangeClosed(1, 1 + random.nextInt(12))
                    .mapToObj(number -> line(number, random))
                    .toList();
            assertEquals(lines, accepted(PartsList.write(lines)), "seed " + seed);
        }
    }

    private static KitLine line(int number, Random random) {
        String description = "x" + random.ints(random.nextInt(20), 0, 9)
                        .mapToObj(i -> List.of("\"", ",", ";", "a", " ", "\u00E9", "'", "=", "\uD83D\uDE00").get(i))
                        .collect(Collectors.joining());
        return new KitLine(
                number,
                "LF-" + random.nextInt(100),
                description,
                random.nextBoolean() ? "-" : "B",
                1 + random.nextInt(9_999),
                "TUBE",
                random.nextBoolean() ? Optional.empty() : Optional.of(new HeatId("H-" + random.nextInt(9))));
    }

    private static String spoiled(String good, String alphabet, Random random) {
        List<String> pieces = new ArrayList<>(good.chars().mapToObj(Character::toString).toList());
        for (int i = random.nextInt(5); i >= 0; i--) {
            String piece = String.valueOf(alphabet.charAt(random.nextInt(alphabet.length())));
            int at = random.nextInt(pieces.size());
            switch (random.nextInt(3)) {
                case 0 -> pieces.set(at, piece);
                case 1 -> pieces.add(at, piece);
                default -> pieces.remove(at);
            }
        }
        return String.join("", pieces);
    }

    private static List<KitLine> accepted(String csv) {
        PartsList list = PartsList.parse(csv);
        return assertInstanceOf(PartsList.Accepted.class, list, list::toString).lines();
    }

    private static List<ListProblem> rejected(String csv) {
        return assertInstanceOf(PartsList.Rejected.class, PartsList.parse(csv)).problems();
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = PartsListTest.class.getResourceAsStream(name)) {
            assertNotNull(in, name);
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
