package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rules for persons: one thing at a time, walking in between, inside working hours. */
final class PersonRules {

    private PersonRules() {}

    static List<Violation> check(LineProblem problem, Plan plan) {
        List<Violation> found = new ArrayList<>();
        Map<BadgeId, List<Action>> byPerson = plan.actions().stream().collect(Collectors.groupingBy(Action::person));
        byPerson.forEach((person, actions) -> {
            Optional<Hands> hands = problem.hands().stream().filter(one -> one.person().equals(person)).findFirst();
            for (Action action : actions) {
                if (hands.isEmpty() || !hands.get().works(action.startSeconds(), action.endSeconds())) {
                    found.add(new Violation.OutOfShift(person, action.startSeconds(), action.endSeconds()));
                }
            }
            follow(problem, person, hands.flatMap(Hands::at), actions, found);
        });
        return found;
    }

    private static void follow(LineProblem problem, BadgeId person, Optional<StationId> at, List<Action> actions,
            List<Violation> found) {
        Optional<StationId> place = at;
        int free = 0;
        for (Action action : actions) {
            if (place.isPresent()) {
                int needed = problem.walking().seconds(place.get(), action.from());
                if (action.startSeconds() - free < needed) {
                    found.add(new Violation.InTwoPlaces(
                            person, place.get(), action.from(), action.startSeconds() - free, needed));
                }
            }
            place = Optional.of(action.to());
            free = action.endSeconds();
        }
    }
}
