package brightseam.lineplan.shell;

import brightseam.lineplan.Layout;
import brightseam.lineplan.Place;
import brightseam.procedure.shell.SharedTables;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** The layout of the line as its file writes it. */
record LayoutFile(double secondsPerMetre, Duration readyBefore, List<HoursRow> shifts, List<PlaceRow> places) {

    record HoursRow(String from, String until) {}

    record PlaceRow(String station, double positionM, int baskets, Optional<Duration> lower, Optional<Duration> lift,
            Optional<Duration> drip, Optional<Duration> work, Optional<Duration> workEach, boolean attended,
            boolean waits) {

        private Place place() {
            return new Place(station, positionM, baskets, lower.orElse(Duration.ZERO), lift.orElse(Duration.ZERO),
                    drip.orElse(Duration.ZERO), work.orElse(Duration.ZERO), workEach.orElse(Duration.ZERO), attended,
                    waits);
        }
    }

    /**
     * The layout in {@code file}, or the one that the program brings along where {@code file} is empty.
     *
     * @throws IllegalStateException naming file, line and column where it is broken
     */
    static Layout read(String file) {
        LayoutFile found = file.isEmpty() ? SharedTables.table("line", LayoutFile.class)
                : SharedTables.table("line", Path.of(file), LayoutFile.class);
        return new Layout(found.secondsPerMetre, found.readyBefore,
                found.shifts.stream().map(row -> new Layout.Hours(
                        LocalTime.parse(row.from()), until(row.until()))).toList(),
                found.places.stream().map(PlaceRow::place).toList());
    }

    private static LocalTime until(String time) {
        return time.equals("24:00") ? LocalTime.MAX : LocalTime.parse(time);
    }
}
