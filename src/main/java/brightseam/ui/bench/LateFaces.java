package brightseam.ui.bench;

import brightseam.kernel.StationId;
import brightseam.procedure.Step;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.TextPad;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Draws what is asked where a step was done before anybody could write it down: where, when, why, and the PIN. */
final class LateFaces {

    private static final List<String> REASONS =
            List.of("Tablet was out of order", "No network", "Power was out", "Forgotten at the time");
    private static final int WORDS_MAX = 120;
    private static final int DIGITS_OF_A_TIME = 4;

    private final Bench bench;
    private final ZoneId zone = ZoneId.systemDefault();

    LateFaces(Bench bench) {
        this.bench = bench;
    }

    void draw(WorkCard card, Side.EnteringLate side) {
        List<StationId> stations = bench.model().stationsToBegin();
        if (side.station().isEmpty() && stations.size() == 1) {
            draw(card, side.at(stations.getFirst()));
        } else if (side.station().isEmpty()) {
            station(card, side, stations);
        } else if (side.daysAgo().isEmpty()) {
            day(card, side);
        } else if (side.time().isEmpty()) {
            time(card, side);
        } else if (side.reason().isEmpty()) {
            reason(card, side);
        } else {
            pin(card, side);
        }
        card.actions(bench.way("Back to the card", () -> bench.model().side(Optional.empty())));
    }

    private void station(WorkCard card, Side.EnteringLate side, List<StationId> stations) {
        card.head(about(), "Where was it done?");
        card.add(Texts.choices(stations.stream().<Component>map(station -> bench.way(station.value(),
                () -> side(side.at(station)))).toList()));
    }

    private void day(WorkCard card, Side.EnteringLate side) {
        card.head(about(), "On which day was it done?");
        card.instruction("The record shows both times: the one that you state, and now. A hold that nobody saw cannot"
                + " be entered late.");
        card.add(Texts.choices(List.of(bench.way("Today", () -> side(side.on(0))),
                bench.way("Yesterday", () -> side(side.on(1))),
                bench.way("The day before", () -> side(side.on(2))))));
    }

    private void time(WorkCard card, Side.EnteringLate side) {
        card.head(about(), "At what time was it done?");
        card.instruction("Four digits: 0940 for twenty to ten in the morning, 1415 for a quarter past two.");
        KeyPad pad = KeyPad.reading("Time of day, four digits", "h", "0000 to 2359", 0, false);
        pad.addEnteredListener(entered -> bench.touched().shows(() -> clock(entered.value())
                .ifPresent(time -> side(side.at(time)))));
        card.add(Texts.beside(pad));
    }

    /** {@code 940} and {@code 0940} are the same time; empty where there is no such time of day. */
    static Optional<LocalTime> clock(String digits) {
        if (!digits.matches("[0-9]{1," + DIGITS_OF_A_TIME + "}")) {
            return Optional.empty();
        }
        try {
            int number = Integer.parseInt(digits);
            return Optional.of(LocalTime.of(number / 100, number % 100));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }

    private void reason(WorkCard card, Side.EnteringLate side) {
        card.head(about(), "Why is it entered late?");
        if (side.typing()) {
            TextPad pad = new TextPad("In your own words", "Go on", WORDS_MAX);
            pad.addEnteredListener(entered -> bench.touched().shows(() -> side(side.because(
                    entered.value().substring(0, Math.min(entered.value().length(), WORDS_MAX))))));
            card.add(pad);
            return;
        }
        Div choices = Texts.choices(REASONS.stream().<Component>map(
                why -> bench.way(why, () -> side(side.because(why)))).toList());
        choices.add(bench.way("Other words", () -> side(side.inOwnWords())));
        card.add(choices);
    }

    private void pin(WorkCard card, Side.EnteringLate side) {
        Instant doneAt = side.doneAt(today(), zone);
        card.head(about(), "Done " + Words.stamp(doneAt, zone) + "?");
        card.add(Texts.words("ask", "You state:"), Texts.lines(List.of(
                about() + " was done at " + side.station().orElseThrow() + " on "
                        + Words.stamp(doneAt, zone) + ".",
                "It is entered late: " + side.reason().orElseThrow() + ".")),
                Texts.words("meaning", "“I state that this step was done as written at that time.”"));
        KeyPad pad = KeyPad.pin("Your PIN signs the statement", 4);
        pad.addEnteredListener(entered -> bench.touched().does(() -> stated(side, doneAt, entered.value())));
        card.add(Texts.beside(pad));
    }

    private Verdict stated(Side.EnteringLate side, Instant doneAt, String pin) {
        BenchModel model = bench.model();
        Verdict verdict = bench.deeds().enterLate(model.ids(), step(), side.station().orElseThrow(), model.ready(),
                doneAt, side.reason().orElseThrow(), pin);
        if (verdict instanceof Verdict.Accepted) {
            model.side(Optional.empty());
        }
        return verdict;
    }

    private LocalDate today() {
        return LocalDate.ofInstant(bench.model().now().wall(), zone);
    }

    private String about() {
        return "Step " + step().number() + " " + step().title();
    }

    private Step step() {
        return bench.model().startable().orElseThrow();
    }

    private void side(Side next) {
        bench.model().side(Optional.of(next));
    }
}
