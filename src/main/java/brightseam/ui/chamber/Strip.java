package brightseam.ui.chamber;

import java.util.List;

/**
 * What stands at the head of every screen of a session.
 *
 * @param session its name
 * @param about kit and chamber, in words
 * @param stops the session's phases, in order
 * @param gauges what is measured and what is left, the most important first
 * @param troubles what is wrong with a meter, by its name
 * @param simulated whether anything shown is made up by a program
 */
record Strip(String session, String about, List<Stop> stops, List<Gauge> gauges, List<String> troubles,
        boolean simulated) {

    /** Copies the lists. */
    Strip {
        stops = List.copyOf(stops);
        gauges = List.copyOf(gauges);
        troubles = List.copyOf(troubles);
    }

    /** One phase. */
    record Stop(String word, Standing standing) {}

    /** Where a phase stands. */
    enum Standing { DONE, NOW, TO_COME, TROUBLE }
}
