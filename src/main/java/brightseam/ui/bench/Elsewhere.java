package brightseam.ui.bench;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.people.Person;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.RecordedEvent;
import brightseam.ui.parts.Verdict;
import brightseam.words.Wording;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Says what somebody else, or the server, did to the card that is open here. */
final class Elsewhere {

    private Elsewhere() {}

    /** The weightiest of {@code news} that did not happen on {@code tablet}; a nonconformance weighs most. */
    static Optional<Verdict> told(List<RecordedEvent> news, String tablet, Function<BadgeId, Optional<Person>> people) {
        List<TravellerEvent> others = news.stream().map(RecordedEvent::event)
                .filter(event -> !event.origin().tablet().equals(tablet)).toList();
        Optional<Verdict> stopped = others.stream()
                .filter(TravellerEvent.NonconformanceOpened.class::isInstance)
                .map(TravellerEvent.NonconformanceOpened.class::cast).findFirst().map(Elsewhere::stopped);
        return stopped.or(() -> others.reversed().stream()
                .map(event -> word(event).<Verdict>map(word -> new Verdict.Accepted(word,
                        who(event.origin(), people) + " did that on " + event.origin().tablet()
                                + ". The card shows what is to do now.")))
                .flatMap(Optional::stream).findFirst());
    }

    private static Verdict stopped(TravellerEvent.NonconformanceOpened opened) {
        return new Verdict.Refused("Stopped", "Nonconformance " + opened.number() + ": "
                + Wording.words(opened.cause().name()) + " at " + Wording.words(opened.step().value()) + ".",
                "If the pieces are in a bath, take them out at once. Then call the lead.");
    }

    /** The word for what is worth telling; a refused attempt elsewhere is not. */
    private static Optional<String> word(TravellerEvent event) {
        return event instanceof TravellerEvent.AttemptRefused ? Optional.empty() : Optional.of(switch (event) {
            case TravellerEvent.StepSigned signed -> "Signed";
            case TravellerEvent.StepStamped stamped -> "Stamped";
            case TravellerEvent.HoldEnded ended -> "Taken out";
            case TravellerEvent.Dispositioned decided -> "Decided";
            default -> "Moved on";
        });
    }

    private static String who(Origin origin, Function<BadgeId, Optional<Person>> people) {
        return origin.by().equals(Origin.SHOP) ? "The server"
                : people.apply(origin.by()).map(Person::name).orElse(origin.by().value());
    }
}
