package brightseam.traveller;

import brightseam.kernel.SessionId;
import brightseam.kernel.TravellerId;
import brightseam.people.Signer;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.TravellerCommand.BeginArc;
import brightseam.traveller.TravellerCommand.JudgeJoint;
import brightseam.traveller.TravellerCommand.NoteJoint;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** What the chamber of a {@link RandomShift} asks of one lot: mostly what is due, sometimes anything. */
final class RandomSession {

    private static final int JOINTS = 3;

    private final Commands ask;
    private final Random random;
    private final TravellerId lot;

    RandomSession(Commands ask, Random random, String lot) {
        this.ask = ask;
        this.random = random;
        this.lot = new TravellerId(lot);
    }

    TravellerCommand told(Traveller traveller, Step step) {
        if (step.kind() == StepKind.PASS_IN) {
            return Inside.enter(ask);
        }
        Optional<ArcRun> burning = traveller.burning();
        if (burning.isPresent()) {
            return hot(burning.get().joint().number(), burning.get().run());
        }
        long welded = traveller.arcs().stream().filter(arc -> arc.pass() == traveller.pass(step.id())).count();
        return welded < JOINTS ? arc("J0" + (1 + welded), run(traveller, "J0" + (1 + welded)))
                : Inside.sign(ask, Commands.LEAD);
    }

    TravellerCommand anything(Traveller traveller, Signer who) {
        String joint = "J0" + (1 + random.nextInt(JOINTS));
        int run = Math.max(1, run(traveller, joint) - random.nextInt(2));
        return switch (random.nextInt(7)) {
            case 0 -> Inside.enter(ask, who, random.nextBoolean() ? List.of() : ask.scanned("pass-in"));
            case 1 -> arc(joint, run(traveller, joint));
            case 2 -> hot(joint, run);
            case 3 -> Inside.lockPass(ask, random.nextBoolean());
            case 4, 5 -> own(Inside.judged(ask, joint, run, random.nextBoolean() ? Commands.INSPECTOR : who,
                    random.nextBoolean()));
            default -> Inside.sign(ask, who);
        };
    }

    private TravellerCommand hot(String joint, int run) {
        NoteJoint note = switch (random.nextInt(8)) {
            case 0 -> Inside.exceeded(ask, joint, run);
            case 1 -> Inside.unproven(ask, joint, run);
            default -> Inside.good(ask, joint, run);
        };
        JointFact f = note.joint();
        return new NoteJoint(note.origin(), new JointFact(f.joint(), f.session(), f.chamber(), f.run(), f.startedAt(),
                f.stoppedAt(), f.hotUntil(), parts(), f.filler(), f.welder(), f.backSide(), f.oxygenMeter(),
                f.oxygenPpmLimit(), f.oxygenPpmHighest(), f.oxygenPpmMean(), f.secondsAbove(), f.excursions(), f.gaps(),
                f.proven(), f.seriesSha256(), f.contacts(), f.simulated()));
    }

    private TravellerCommand arc(String joint, int run) {
        BeginArc begin = Inside.arc(ask, joint, run);
        ArcFact a = begin.arc();
        SessionId session = random.nextInt(30) == 0 ? new SessionId("CS-0011") : a.session();
        return new BeginArc(begin.origin(), new ArcFact(a.joint(), session, a.chamber(), a.run(), parts(),
                a.filler(), a.welder(), a.backSide(), a.contacts(), a.simulated()));
    }

    private TravellerCommand own(JudgeJoint judge) {
        JudgedFact v = judge.verdict();
        return new JudgeJoint(judge.origin(), new JudgedFact(v.joint(), v.session(), v.run(), parts(), v.colour(),
                v.accepted(), v.findings(), v.acceptance(), v.light(), v.next(), v.photographs()), judge.signer());
    }

    private List<Joined> parts() {
        return List.of(new Joined(lot, random.nextInt(3) > 0 ? List.of() : List.of(1 + random.nextInt(3))));
    }

    private static int run(Traveller traveller, String joint) {
        return 1 + traveller.arcs().stream().filter(arc -> arc.joint().number().equals(joint))
                .mapToInt(ArcRun::run).max().orElse(0);
    }
}
