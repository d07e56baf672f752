package brightseam.ui.gear;

import static brightseam.chamber.Gear.BUNDLE;
import static brightseam.chamber.Gear.at;
import static brightseam.chamber.Gear.bundle;
import static brightseam.chamber.Gear.chamber;
import static brightseam.chamber.Gear.decimal;
import static brightseam.chamber.Gear.dewar;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.chamber.ArgonDemand;
import brightseam.chamber.ArgonForecast;
import brightseam.chamber.ArgonLeft;
import brightseam.chamber.ArgonNeed;
import brightseam.chamber.ArgonOutlook;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Chamber;
import brightseam.chamber.Gear;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ArgonBoardTest {

    private static final Instant EIGHT = at(0).wall();

    private static ArgonBoard board(Chamber chamber, String bar, String percent, ArgonDemand... demands) {
        List<ArgonLeft> left = new ArrayList<>();
        ArgonLeft.of(bundle(bar), chamber.terms().manifold(), true, at(0)).ifPresent(left::add);
        ArgonLeft.of(dewar(percent), chamber.terms().manifold(), false, at(0)).ifPresent(left::add);
        ArgonNeed need = ArgonNeed.of(chamber, Gear.PURE, Duration.ofHours(3), 2);
        ArgonOutlook outlook = ArgonOutlook.of(chamber, left, need, EIGHT);
        Optional<ArgonForecast> forecast = need instanceof ArgonNeed.Needed
                ? Optional.of(ArgonForecast.of(left, List.of(demands), EIGHT)) : Optional.empty();
        return ArgonBoard.of(new ArgonBoard.Facts(Gear.CHAMBER, "Argon chamber", outlook, forecast,
                List.of("Because."), List.of(), 2), kit -> "Lander frame", EIGHT, ZoneOffset.UTC);
    }

    private static ArgonDemand kit(String label, long inHours) {
        ArgonNeed.Needed need = (ArgonNeed.Needed) ArgonNeed.of(chamber(), Gear.PURE, Duration.ofHours(3), 2);
        return new ArgonDemand(Optional.empty(), Optional.of(new KitId(label)),
                EIGHT.plus(Duration.ofHours(inHours)), need);
    }

    @Test
    void the_first_thing_to_read_says_whether_the_argon_lasts() {
        assertThat(board(chamber(BUNDLE), "180", "5").verdict()).isEqualTo("A session can be begun now. None is due.");
        assertThat(board(chamber(BUNDLE), "180", "5", kit("K-1", 2), kit("K-2", 26)).verdict())
                .isEqualTo("Enough for 2 sessions without a change-over.");
    }

    @Test
    void a_change_over_and_an_end_are_told_as_clock_time_and_as_time_left() {
        ArgonBoard change = board(chamber(BUNDLE), "18", "60", kit("K-1", 2));
        assertThat(change.verdict()).matches("Enough for 1 session; change over 1\\d:\\d\\d, in \\d h \\d\\d min\\.");
        assertThat(change.sessions().getFirst().changeOver()).matches("1\\d:\\d\\d: connect G-0602");
        ArgonBoard ends = board(chamber(BUNDLE), "18", "5", kit("K-1", 0), kit("K-2", 26));
        assertThat(ends.verdict()).isEqualTo("No session can be begun now.");
        ArgonBoard later = board(chamber(BUNDLE), "24", "5", kit("K-1", 0), kit("K-2", 26));
        assertThat(later.verdict()).matches("Runs out Wed 5 Mar 1\\d:\\d\\d, in 1 d \\d h: 1 of 2 sessions can be"
                + " finished\\.");
    }

    @Test
    void what_stands_against_a_session_is_told_first() {
        ArgonBoard none = board(chamber(), "180", "90", kit("K-1", 2));
        assertThat(none.stops()).isTrue();
        assertThat(none.reasons()).containsExactly("Because.");
        ArgonBoard never = board(Gear.leaking(chamber(BUNDLE), "0.05"), "180", "90");
        assertThat(never.verdict()).isEqualTo("No session can be begun now.");
        assertThat(never.takes()).isEqualTo("never gets there");
        assertThat(never.sessions()).isEmpty();
    }

    @Test
    void a_session_s_line_says_what_it_takes_in_parts_and_what_it_lacks() {
        ForecastLine enough = board(chamber(BUNDLE), "180", "5", kit("K-0047", 2)).sessions().getFirst();
        assertThat(enough.what()).isEqualTo("K-0047");
        assertThat(enough.title()).isEqualTo("Lander frame");
        assertThat(enough.begins()).isEqualTo("10:00, in 2 h 00 min");
        assertThat(enough.parts()).matches("purge 7\\.2.m³, holding 1\\.4.m³, lock 0\\.3.m³");
        assertThat(enough.verdict()).isEqualTo("enough");
        ForecastLine lacking = board(chamber(BUNDLE), "24", "5", kit("K-1", 0), kit("K-2", 26)).sessions().getLast();
        assertThat(lacking.verdict()).matches("SHORT by \\d\\.\\d.m³");
        ArgonDemand running = new ArgonDemand(Optional.of(new SessionId("CS-0012")), kit("K-0047", 0).kit(), EIGHT,
                kit("K-0047", 0).need());
        ForecastLine now = board(chamber(BUNDLE), "180", "5", running).sessions().getFirst();
        assertThat(now.what()).isEqualTo("CS-0012");
        assertThat(now.title()).isEqualTo("for K-0047 Lander frame");
        assertThat(now.begins()).isEqualTo("runs now");
    }

    @Test
    void a_source_says_how_much_where_it_stands_and_what_stands_against_it() {
        Moment now = at(600);
        SourceLine feeds = line(bundle("148"), true, List.of("Expired."), now);
        assertThat(feeds.placeWord()).isEqualTo("Connected");
        assertThat(feeds.against()).isEmpty();
        assertThat(feeds.amount()).matches("\\d\\d\\.\\d.m³ to draw, 7\\d.% of a full one");
        assertThat(feeds.reading()).matches("148.bar at 15.°C, read 08:00");
        assertThat(line(dewar("72"), false, List.of(), now).placeWord()).isEqualTo("Stands by");
        assertThat(line(dewar("72"), false, List.of(), now).reading()).matches("72.% full, read 08:00");
        SourceLine off = line(bundle("5"), false, List.of("Nothing to draw."), now);
        assertThat(off.placeWord()).isEqualTo("Stays off");
        assertThat(off.against()).containsExactly("Nothing to draw.");
        assertThat(off.share()).contains(0.0);
        ArgonSource unread = new ArgonSource(BUNDLE, bundle("1").vessel(), Gear.PURE, Optional.empty(),
                Optional.empty(), ArgonSource.Standing.IN_USE);
        assertThat(line(unread, false, List.of("Read it."), now).amount()).isEqualTo("not known how much");
        assertThat(feeds.detail()).contains("2").contains("ppm oxygen").contains(Gear.PURE.certificate());
    }

    private static SourceLine line(ArgonSource source, boolean connected, List<String> against, Moment now) {
        return SourceLine.of(source, "Argon", connected, against, Gear.terms().manifold(), now, ZoneOffset.UTC);
    }

    @Test
    void what_can_be_drawn_is_told_in_cubic_metres() {
        assertThat(GasWords.cubicMetres(decimal("9449"))).isEqualTo("9.4\u00a0m³");
        assertThat(GasWords.cubicMetres(94_960.0)).isEqualTo("95.0\u00a0m³");
        assertThat(board(chamber(BUNDLE), "180", "90").left()).matches("\\d+\\.\\d.m³ connected, \\d+\\.\\d.m³"
                + " standing by");
    }
}
