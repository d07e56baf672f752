package brightseam.traveller.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.line.Station;
import brightseam.line.shell.Stations;
import brightseam.people.Person;
import brightseam.people.SigningRequest;
import brightseam.people.SigningRules;
import brightseam.people.shell.People;
import brightseam.people.shell.SignedWork;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.TravellerCommand.StationFact;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Gathers what the registers of people and stations say about somebody doing a step somewhere. */
@Component
class Entitlement {

    private final People people;
    private final Stations stations;
    private final SignedWork work;

    Entitlement(People people, Stations stations, SignedWork work) {
        this.people = people;
        this.stations = stations;
        this.work = work;
    }

    private static String words(StepKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Optional<StationFact> station(StationId id) {
        return stations.find(id).map(found -> found.state())
                .map(station -> new StationFact(id, station.stationClass(), station.isOutOfUse()));
    }

    /** What stands against the holder of {@code badge} signing work that is no step, by its word. */
    List<Refusal> objections(BadgeId badge, String word, Origin origin) {
        return List.copyOf(work.objections(badge, word, origin.at().wall()));
    }

    /** What stands against the holder of {@code badge}; roles and stamps are for the step's own rules. */
    List<Refusal> objections(BadgeId badge, Optional<Step> step, Origin origin) {
        Optional<Person> person = people.find(badge);
        if (person.isEmpty() || step.isEmpty()) {
            return List.of();
        }
        Set<String> asked = Stream.concat(work.asked().stream(), stations.all().stream()
                .filter(Station::needsQualification).map(Station::stationClass)).collect(Collectors.toSet());
        return List.copyOf(SigningRules.broken(new SigningRequest(
                person.get(), Set.of(step.get().station(), words(step.get().kind())), asked, origin.at().wall())));
    }
}
