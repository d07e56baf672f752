package brightseam.procedure;

import java.util.List;
import java.util.Optional;

/**
 * One file of the procedure folder.
 *
 * @param file the file's name
 * @param id the procedure's name; empty where the file is too broken to tell
 * @param procedure what the file says, where it has no problem
 * @param state how it stands to what is approved
 * @param problems what is wrong with it, empty unless the state is {@link CandidateState#BAD}
 */
public record Candidate(
        String file, Optional<String> id, Optional<Procedure> procedure, CandidateState state, List<Problem> problems) {

    /** Copies the list. */
    public Candidate {
        problems = List.copyOf(problems);
    }
}
