package brightseam.people;

import java.time.Instant;
import java.util.Set;

/**
 * Somebody is about to sign a step.
 *
 * @param person who
 * @param work the words for the step that a qualification may cover: its station class and its kind
 * @param qualificationNeeded the words for which this shop asks for a qualification; others need none
 * @param at when
 */
public record SigningRequest(
        Person person, Set<String> work, Set<String> qualificationNeeded, Instant at) {

    /** Copies the sets. */
    public SigningRequest {
        work = Set.copyOf(work);
        qualificationNeeded = Set.copyOf(qualificationNeeded);
    }
}
