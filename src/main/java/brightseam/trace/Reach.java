package brightseam.trace;

import brightseam.kernel.KitId;
import brightseam.traveller.Phase;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Everything that a thing touched, whole; screens show as much of it as they can.
 *
 * @param question what was asked
 * @param travellers the travellers that it touched, last contact first
 */
public record Reach(TraceQuestion question, List<Reached> travellers) {

    /** Copies the list. */
    public Reach {
        travellers = List.copyOf(travellers);
    }

    /**
     * How much that is.
     *
     * @param travellers how many travellers
     * @param contacts how many contacts
     * @param pieces how many pieces were touched
     * @param kits how many kits they belong to
     * @param onTheirWay travellers on their way and not stopped
     * @param passedIn travellers in the chamber and not stopped
     * @param closed travellers that are closed and not stopped
     * @param quarantine travellers in quarantine
     * @param suspect those of them under suspicion
     * @param scrapped travellers of which no piece is left
     */
    public record Counts(int travellers, int contacts, int pieces, int kits, int onTheirWay, int passedIn, int closed,
            int quarantine, int suspect, int scrapped) {}

    /** Counted over all of it. */
    public Counts counts() {
        return new Counts(travellers.size(), travellers.stream().mapToInt(Reached::contacts).sum(),
                travellers.stream().mapToInt(Reached::pieces).sum(), kits().size(), running(Phase.ACTIVE),
                running(Phase.PASSED_IN), running(Phase.CLOSED), count(Whereabouts::quarantine),
                count(Whereabouts::suspect), count(now -> now.phase() == Phase.SCRAPPED));
    }

    /** The kits that the pieces belong to, sorted. */
    public List<KitId> kits() {
        return travellers.stream().map(reached -> reached.now().kit()).distinct().sorted()
                .collect(Collectors.toUnmodifiableList());
    }

    private int running(Phase phase) {
        return count(now -> now.phase() == phase && !now.quarantine());
    }

    private int count(Predicate<Whereabouts> which) {
        return (int) travellers.stream().map(Reached::now).filter(which).count();
    }
}
