package brightseam.weld;

import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Every command in every state of a joint: accepted with which events, or refused by which rules. {@code mvn test
 * -Dtest=JointMatrixTest -Dapprove=true} writes the answers anew; the difference is reviewed line by line.
 */
class JointMatrixTest {

    private static final Path APPROVED = Path.of("src/test/resources/approved/joint-matrix.txt");

    @Test
    void every_command_in_every_state_is_answered_as_approved() throws IOException {
        List<String> lines = new ArrayList<>();
        states().forEach((name, weld) -> {
            lines.add("## " + name + (weld.known().isEmpty() ? "" : ", " + weld.state().standing(weld.now())));
            commands().forEach((ask, command) -> lines.add(ask + ": " + answer(weld, command.apply(weld))));
        });
        if (Boolean.getBoolean("approve")) {
            Files.write(APPROVED, lines);
        }
        assertEquals(String.join("\n", Files.readAllLines(APPROVED)), String.join("\n", lines));
    }

    @Test
    void the_matrix_asks_every_command() {
        Set<String> asked = commands().values().stream()
                .map(command -> command.apply(new Weld()).getClass().getSimpleName())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> all = Set.of(JointCommand.class.getPermittedSubclasses()).stream().map(Class::getSimpleName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(all, asked);
    }

    private static String answer(Weld weld, JointCommand command) {
        return switch (JointDecider.decide(weld.known(), command)) {
            case Decision.Accepted<JointEvent> accepted -> "-> " + accepted.events().stream()
                    .map(event -> event.getClass().getSimpleName()).collect(Collectors.joining(" "));
            case Decision.Refused<JointEvent> refused -> "refused " + refused.refusals().stream()
                    .map(Refusal::code).collect(Collectors.joining(" "));
        };
    }

    private static Map<String, Weld> states() {
        Map<String, Weld> states = new LinkedHashMap<>();
        states.put("planned", new Weld());
        states.put("tacking", new Weld().starts(ArcPurpose.TACK));
        states.put("tacked", new Weld().starts(ArcPurpose.TACK).stops().passes(700).proves());
        states.put("arc running", new Weld().starts(ArcPurpose.WELD).passes(60));
        states.put("stopped, readings to come", new Weld().starts(ArcPurpose.WELD).passes(60).stops());
        states.put("proven, hot", new Weld().starts(ArcPurpose.WELD).passes(60).stops().proves());
        states.put("cool, readings to come",
                new Weld().starts(ArcPurpose.WELD).passes(60).stops().proves().passes(700));
        states.put("welded", new Weld().welded());
        states.put("repairing", new Weld().welded().starts(ArcPurpose.REPAIR));
        states.put("repaired",
                new Weld().welded().starts(ArcPurpose.REPAIR).passes(30).stops().passes(700).proves());
        Weld rejected = new Weld().welded();
        states.put("rejected", rejected.does(rejected.judge(Verdict.REJECT, "white")));
        Weld accepted = new Weld().welded();
        states.put("accepted", accepted.does(accepted.judge(Verdict.ACCEPT, "silver")));
        return states;
    }

    private static Map<String, Function<Weld, JointCommand>> commands() {
        Map<String, Function<Weld, JointCommand>> commands = new LinkedHashMap<>();
        for (ArcPurpose purpose : ArcPurpose.values()) {
            commands.put("start " + purpose, weld -> weld.start(purpose, Weld.good()));
        }
        commands.put("stop", weld -> new JointCommand.StopArc(Weld.JOINT, weld.origin()));
        for (HotStretch stretch : HotStretch.values()) {
            commands.put("evidence of run 1, " + stretch, weld -> new JointCommand.TakeEvidence(
                    Weld.JOINT, 1, stretch, Weld.clean(), weld.origin()));
        }
        commands.put("accept", weld -> weld.judge(Verdict.ACCEPT, "silver"));
        commands.put("reject", weld -> weld.judge(Verdict.REJECT, "white"));
        return commands;
    }
}
