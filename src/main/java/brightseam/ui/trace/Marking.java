package brightseam.ui.trace;

import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.trace.Reach;
import brightseam.trace.Reached;
import brightseam.trace.Touch;
import brightseam.traveller.Phase;
import brightseam.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What putting a whole answer under suspicion comes to.
 *
 * @param touched whom it marks, each with the step at which the thing touched it first
 * @param already who is suspect for the same reason and is left as it is
 * @param scrapped of whom no piece is left
 */
record Marking(Map<TravellerId, Optional<StepId>> touched, List<Reached> marked, List<TravellerId> already,
        List<TravellerId> scrapped) {

    /**
     * Sorts {@code reach}.
     *
     * @param touches its contacts, in order of time
     * @param already who is suspect for the same reason
     */
    static Marking of(Reach reach, List<Touch> touches, Set<TravellerId> already) {
        Map<TravellerId, Optional<StepId>> first = new TreeMap<>();
        touches.forEach(touch -> first.putIfAbsent(touch.traveller(), touch.step()));
        Map<TravellerId, Optional<StepId>> marked = new TreeMap<>();
        List<Reached> whom = new ArrayList<>();
        List<TravellerId> known = new ArrayList<>();
        List<TravellerId> scrapped = new ArrayList<>();
        for (Reached reached : reach.travellers()) {
            TravellerId id = reached.now().traveller();
            if (reached.now().phase() == Phase.SCRAPPED) {
                scrapped.add(id);
            } else if (already.contains(id)) {
                known.add(id);
            } else {
                marked.put(id, first.getOrDefault(id, Optional.empty()));
                whom.add(reached);
            }
        }
        return new Marking(marked, List.copyOf(whom), List.copyOf(known), List.copyOf(scrapped));
    }

    /** How many were marked, where they are, and who was left out. */
    String words() {
        int pieces = marked.stream().mapToInt(one -> one.now().pieces().size()).sum();
        List<String> words = new ArrayList<>(List.of(
                Words.count(marked.size(), "traveller", "travellers") + " with "
                        + Words.count(pieces, "piece", "pieces") + ": " + in(Phase.ACTIVE) + " on the way, "
                        + in(Phase.PASSED_IN) + " in the chamber, " + in(Phase.CLOSED) + " closed."));
        if (!already.isEmpty()) {
            words.add(already.size() + " already suspect for this reason, left as they are.");
        }
        if (!scrapped.isEmpty()) {
            words.add(scrapped.size() + " scrapped, left out.");
        }
        return String.join(" ", words);
    }

    private long in(Phase phase) {
        return marked.stream().filter(one -> one.now().phase() == phase).count();
    }
}
