package brightseam.weld.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.people.Person;
import brightseam.traveller.Disposition;
import brightseam.weld.ArcFacts;
import brightseam.weld.Joint;
import java.util.List;
import java.util.Optional;

/** What a joint is decided on besides its own past. */
interface Surroundings {

    /** Whoever holds {@code badge}. */
    Optional<Person> person(BadgeId badge);

    /** The chamber that holds the kit of {@code joint}. */
    Optional<ChamberNow.Inside> inside(JointId joint, Moment now);

    /** The facts for {@code request} of {@code welder} at {@code now}. */
    ArcFacts facts(JointId id, Optional<Joint> joint, ArcRequest request, Person welder, Moment now);

    /** What stands against the holder of {@code badge} judging a joint at {@code now}, besides roles and stamps. */
    default List<Refusal> againstJudging(BadgeId badge, Moment now) {
        return List.of();
    }

    /** The disposition of a rejected joint, in words, where every traveller of it got that one. */
    Optional<String> decided(Joint joint, Disposition disposition);
}
