package brightseam.weld;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kit.ListProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MapListTest {

    private static final String HEADER = "joint,description,class,parts,back_side,back_side_reason,filler,"
            + "cooling_minutes,cooling_until,cooling_source,acceptance,x,y\r\n";
    private static final String FIRST =
            "J01,\"Leg to ring, upper\",A,1/1 4/2,purged,,erti-9,10,below 427 degC,trial 12,iso-9606-5,400,250\r\n";
    private static final String SECOND =
            "J02,Boss to plate,C,2/1 3/1 3/2,open,\"solid; nothing hot\",,2.5,below 427 degC,trial 13,shop-a,,\r\n";

    private static List<ListProblem> problems(String csv) {
        return assertInstanceOf(MapList.Rejected.class, MapList.parse(csv)).problems();
    }

    private static ListProblem only(String line) {
        List<ListProblem> problems = problems(HEADER + line);
        assertEquals(1, problems.size(), problems.toString());
        return problems.getFirst();
    }

    @Test
    void a_list_is_read_whole_and_written_the_same() {
        List<MapJoint> joints =
                assertInstanceOf(MapList.Accepted.class, MapList.parse(HEADER + FIRST + SECOND)).joints();
        assertEquals(List.of(new MapJoint("J01", "Leg to ring, upper", JointClass.A,
                        List.of(new JointPart(1, 1), new JointPart(4, 2)), BackSide.PURGED, Optional.empty(),
                        Optional.of(FillerClass.ERTI_9),
                        new Cooling(Duration.ofMinutes(10), "below 427 degC", "trial 12"), "iso-9606-5",
                        Optional.of(new Spot(400, 250))),
                new MapJoint("J02", "Boss to plate", JointClass.C,
                        List.of(new JointPart(2, 1), new JointPart(3, 1), new JointPart(3, 2)), BackSide.OPEN,
                        Optional.of("solid; nothing hot"), Optional.empty(),
                        new Cooling(Duration.ofSeconds(150), "below 427 degC", "trial 13"), "shop-a",
                        Optional.empty())), joints);
        assertEquals(new MapList.Accepted(joints), MapList.parse(MapList.write(joints)));
    }

    @Test
    void columns_may_stand_in_any_order_and_be_parted_by_semicolons() {
        String csv = "Y;X;acceptance;cooling_source;cooling_until;cooling_minutes;filler;back_side_reason;back_side;"
                + "parts;class;description;joint\n250;400;iso-9606-5;trial 12;below 427 degC;10;ERTi-9;;purged;"
                + "1/1 4/2;A;Leg to ring, upper;J01";
        assertEquals(MapList.parse(HEADER + FIRST), MapList.parse(csv));
    }

    @Test
    void every_problem_is_named_with_its_line_and_column() {
        String wrong = "j1,=cmd,D,1/1,washed,,ERTi-7,500,,,Shop A,1001,-3\r\n";
        List<ListProblem> problems = problems(HEADER + FIRST + wrong);
        assertEquals(12, problems.size(), problems.toString());
        assertEquals(List.of(3), problems.stream().map(ListProblem::line).distinct().toList());
        assertEquals(List.of(1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12, 13),
                problems.stream().map(ListProblem::column).sorted().toList());
    }

    @Test
    void a_line_makes_sense_as_a_whole() {
        assertEquals(6, only("J01,Boss,C,1/1 1/2,open,,,2,cool,trial,shop-a,,\r\n").column());
        assertEquals(6, only("J01,Boss,C,1/1 1/2,vented,no need,,2,cool,trial,shop-a,,\r\n").column());
        assertEquals(13, only("J01,Boss,C,1/1 1/2,vented,,,2,cool,trial,shop-a,5,\r\n").column());
        assertEquals(4, only("J01,Boss,C,1/1 1/1,vented,,,2,cool,trial,shop-a,,\r\n").column());
        ListProblem twice = only(FIRST + FIRST);
        assertEquals(3, twice.line());
        assertEquals("a number that line 2 has not used", twice.expected());
    }

    @Test
    void a_list_without_lines_or_columns_says_what_is_missing() {
        assertEquals("at least one line below the column names", problems(HEADER).getFirst().expected());
        assertEquals("the column name y", problems(HEADER.replace(",y", "") + FIRST).getFirst().expected());
        assertEquals("each column name once", problems("x," + HEADER + FIRST).getFirst().expected());
        assertEquals("13 cells, as in the first line", problems(HEADER + "J01,Boss\r\n").getFirst().expected());
        assertEquals(1, problems("").size());
    }

    @Test
    void more_than_the_most_is_refused_at_the_line_where_it_begins() {
        StringBuilder csv = new StringBuilder(HEADER);
        for (int i = 0; i <= MapSheet.JOINTS_MAX; i++) {
            csv.append(FIRST.replace("J01", "J" + i));
        }
        assertEquals(MapSheet.JOINTS_MAX + 2, problems(csv.toString()).getFirst().line());
        assertEquals(1, problems("x".repeat(MapList.CHARACTERS_MAX + 1)).size());
    }

    @Test
    void the_example_that_comes_along_is_read() throws IOException {
        String example = Files.readString(Path.of("shared/weld-map-example.csv"));
        assertEquals(3, assertInstanceOf(MapList.Accepted.class, MapList.parse(example)).joints().size());
    }
}
