package brightseam.session;

import static brightseam.session.SessionRig.*;
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
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Every command in every phase and every state of the lock: accepted with which events, or refused by which rules. The
 * answers lie in a file that is read as a table of the rules; after a change of rules {@code mvn test
 * -Dtest=SessionMatrixTest -Dapprove=true} writes it anew, and the difference is reviewed line by line.
 */
class SessionMatrixTest {

    private static final Path APPROVED = Path.of("src/test/resources/approved/session-matrix.txt");

    @Test
    void every_command_in_every_state_is_answered_as_approved() throws IOException {
        List<String> lines = new ArrayList<>();
        states().forEach((name, rig) -> {
            lines.add("## " + name);
            commands().forEach((ask, command) -> lines.add(ask + ": " + answer(rig, command)));
        });
        if (Boolean.getBoolean("approve")) {
            Files.write(APPROVED, lines);
        }
        assertEquals(String.join("\n", Files.readAllLines(APPROVED)), String.join("\n", lines));
    }

    @Test
    void the_matrix_asks_every_command() {
        SessionRig rig = fit();
        Set<String> asked = commands().values().stream().map(ask -> ask.apply(rig).getClass().getSimpleName())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> all = Set.of(SessionCommand.class.getPermittedSubclasses()).stream().map(Class::getSimpleName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(all, asked);
    }

    @Test
    void the_matrix_has_every_phase_and_every_state_of_the_doors() {
        Set<Phase> phases = states().values().stream().filter(rig -> rig.known())
                .map(rig -> rig.session().phase()).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(Phase.values()), phases);
        Set<Lock.Doors> doors = states().values().stream().filter(rig -> rig.known())
                .map(rig -> rig.session().lock().doors()).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(Lock.Doors.values()), doors);
    }

    private static String answer(SessionRig rig, Ask ask) {
        return switch (rig.decide(ask)) {
            case Decision.Accepted<SessionEvent> accepted when accepted.events().isEmpty() -> "-> nothing";
            case Decision.Accepted<SessionEvent> accepted -> "-> " + accepted.events().stream()
                    .map(event -> event.getClass().getSimpleName()).collect(Collectors.joining(" "));
            case Decision.Refused<SessionEvent> refused -> "refused " + refused.refusals().stream()
                    .map(Refusal::code).collect(Collectors.joining(" "));
        };
    }

    private static Map<String, SessionRig> states() {
        Map<String, SessionRig> states = new LinkedHashMap<>();
        states.put("not begun", new SessionRig().later(600));
        states.put("check-in, nothing in", opened().later(600));
        states.put("check-in, wire missing", opened().later(600).does(in(LEG)).does(in(LUG)).does(in(TRAY))
                .does(in(GLOVES_A)).does(in(GLOVES_B)));
        states.put("check-in, all in", checkedIn().later(600));
        states.put("closed", closed().later(600));
        states.put("closed again after a stopped purge", fit().does(rig -> rig.stopPurge()));
        states.put("purging", purging().later(600));
        states.put("fit", fit());
        states.put("unfit", fit().later(60).does(SessionRig::noteUnfit));
        states.put("fit, lock's outer door open, empty", fit().does(SessionRig::openOuter));
        states.put("fit, lock's outer door open, wire in it",
                fitWithoutWire().does(SessionRig::openOuter).does(late(WIRE)));
        states.put("fit, lock purging, too short", fitWithoutWire().does(SessionRig::openOuter).does(late(WIRE))
                .does(rig -> rig.shutOuter(sweep())).later(60));
        states.put("fit, lock purging by cycles", fit().does(rig -> rig.purgeLock(cycles(3))).later(60));
        states.put("fit, lock purging by its meter", fit().does(rig -> rig.purgeLock(byMeter())).later(60));
        states.put("fit, lock purged, wire in it", wireInPurgedLock());
        states.put("fit, inner door open", wireInPurgedLock().does(SessionRig::openInner).later(5));
        states.put("fit, inner door open, leg on its way out",
                wireInPurgedLock().does(SessionRig::openInner).later(5).does(out("T-1042")));
        states.put("fit, shut, leg on its way out", wireInPurgedLock().does(SessionRig::openInner).later(5)
                .does(out("T-1042")).does(SessionRig::shutInner));
        states.put("fit, outer door open, leg on its way out", wireInPurgedLock().does(SessionRig::openInner).later(5)
                .does(out("T-1042")).does(SessionRig::shutInner).does(SessionRig::openOuter));
        states.put("unfit, inner door open",
                wireInPurgedLock().does(SessionRig::openInner).later(5).does(SessionRig::noteUnfit));
        states.put("ended", fit().does(SessionRig::openChamber).later(60));
        states.put("abandoned", opened().does(rig -> rig.abandon(LEAD)).later(600));
        return states;
    }

    private static Map<String, Ask> commands() {
        Map<String, Ask> commands = new LinkedHashMap<>();
        commands.put("open session", SessionRig::open);
        commands.put("check wire in", in(WIRE));
        commands.put("take leg back", takeBack("T-1042"));
        commands.put("leave wire out", leaveOut("T-1044"));
        commands.put("close chamber", SessionRig::close);
        commands.put("start purge", SessionRig::startPurge);
        commands.put("start purge without argon", rig -> rig.startPurge(Optional.empty()));
        commands.put("stop purge", rig -> rig.stopPurge());
        commands.put("note fit", SessionRig::noteFit);
        commands.put("note unfit", SessionRig::noteUnfit);
        commands.put("open outer door", SessionRig::openOuter);
        commands.put("put wire in lock", late(WIRE));
        commands.put("put second tray in lock", late(supply("TL-0002", "stainless-lock-tray")));
        commands.put("put leg out", out("T-1042"));
        commands.put("take leg from lock", take("T-1042"));
        commands.put("take wire from lock", take("T-1044"));
        commands.put("shut outer door", rig -> rig.shutOuter(sweep()));
        commands.put("purge lock", rig -> rig.purgeLock(sweep()));
        commands.put("note cycle", SessionRig::cycle);
        commands.put("open inner door", SessionRig::openInner);
        commands.put("open inner door, meter reads 12 ppm",
                rig -> rig.openInner(Optional.of(rig.read(LOCK_O2, "12")), true, FABRICATOR));
        commands.put("shut inner door", SessionRig::shutInner);
        commands.put("note pass", rig -> rig.notePass(1));
        commands.put("open chamber", SessionRig::openChamber);
        commands.put("open chamber in bad air",
                rig -> rig.openChamber(opening(Optional.of(meter(ROOM, "19.0")), true), LEAD));
        commands.put("abandon", rig -> rig.abandon(LEAD));
        return commands;
    }
}
