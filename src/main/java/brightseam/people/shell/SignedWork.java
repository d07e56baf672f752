package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Syntax;
import brightseam.people.SigningRefusal;
import brightseam.people.SigningRequest;
import brightseam.people.SigningRules;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Work that is signed and that a shop may ask a qualification for besides what its stations ask for: any kind of step,
 * such as {@code inspection}, and what is no step. Named in {@code brightseam.qualified-for}, with commas between.
 */
@Component
public class SignedWork {

    /** Deciding what becomes of a nonconformance. */
    public static final String DISPOSITION = "disposition";
    /** Entering what an analysis of a bath found. */
    public static final String BATH_ANALYSIS = "bath-analysis";
    /** Judging a welded joint. */
    public static final String JOINT_JUDGEMENT = "joint-judgement";

    private final People people;
    private final Set<String> asked;

    SignedWork(People people, @Value("${brightseam.qualified-for:}") String words) {
        this.people = people;
        this.asked = Arrays.stream(words.split(",")).map(String::strip).filter(word -> !word.isEmpty())
                .peek(word -> Syntax.slug("brightseam.qualified-for", word)).collect(Collectors.toUnmodifiableSet());
    }

    /** Work that is no step and that a qualification can be granted for. */
    public static List<String> words() {
        return List.of(DISPOSITION, BATH_ANALYSIS, JOINT_JUDGEMENT);
    }

    /** The words for which this shop asks a qualification wherever the work is done. */
    public Set<String> asked() {
        return asked;
    }

    /** What stands against the holder of {@code badge} signing {@code word} at {@code at}, where somebody has it. */
    public List<SigningRefusal> objections(BadgeId badge, String word, Instant at) {
        return people.find(badge).map(person ->
                SigningRules.broken(new SigningRequest(person, Set.of(word), asked, at))).orElse(List.of());
    }
}
