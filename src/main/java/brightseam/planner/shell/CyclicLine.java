package brightseam.planner.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import brightseam.planner.Walking;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The cyclic form of the line: carriers all alike go through the tanks for ever, one is put in and one taken out in
 * each cycle, and one pair of hands, or one hoist, repeats the same round. The shortest round is wanted.
 *
 * <p>Hands' tasks and the walking between them are stated by what states them for the shop's plan
 * ({@link WalkingOrder}); new here is that every task comes again one period later. Loading model: station 0 loads and
 * unloads, takes any number of carriers and asks for no time; the carrier that is unloaded need not be the one that is
 * loaded next.
 */
public final class CyclicLine {

    /**
     * A line and its one route.
     *
     * @param tanks numbers of the stations by order of treatment; station 0 comes before and after them
     * @param soakMinSeconds shortest soak in each tank
     * @param soakMaxSeconds longest soak in each tank, empty where there is none
     * @param moveSeconds move i takes a carrier from the place of soak i (0: loading) to that of the next
     * @param walking ways without a carrier, station 0 among the places
     */
    public record Line(
            List<StationId> tanks, int[] soakMinSeconds, OptionalInt[] soakMaxSeconds, int[] moveSeconds,
            StationId loading, Walking walking) {}

    /**
     * A round.
     *
     * @param periodSeconds how long it takes
     * @param moveStartSeconds when each move begins in it
     * @param isProven whether none is shorter
     */
    public record Round(int periodSeconds, int[] moveStartSeconds, boolean isProven) {}

    private final Line line;
    private final CpModel model = Solvers.model();
    private final IntVar period;
    private final List<HandsTask> moves = new ArrayList<>();
    private final List<HandsTask> nextMoves = new ArrayList<>();

    private CyclicLine(Line line) {
        this.line = line;
        int most = 0;
        for (int i = 0; i < line.moveSeconds().length; i++) {
            most += line.moveSeconds()[i] + (i == 0 ? 0 : line.soakMinSeconds()[i - 1])
                    + line.walking().seconds(place(i + 1), line.loading());
        }
        period = model.newIntVar(0, most, "period");
        for (int i = 0; i < line.moveSeconds().length; i++) {
            moves.add(move(i, 0, most));
            nextMoves.add(move(i, 1, most * 2));
        }
    }

    /** The shortest round; empty where there is none or none was found in time. */
    public static Optional<Round> shortest(Line line, SolverSettings settings) {
        CyclicLine cyclic = new CyclicLine(line);
        cyclic.state();
        CpSolver solver = Solvers.within(settings.limit(), settings);
        CpSolverStatus status = solver.solve(cyclic.model);
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return Optional.empty();
        }
        int[] starts = cyclic.moves.stream().mapToInt(move -> (int) solver.value(move.start())).toArray();
        return Optional.of(new Round((int) solver.value(cyclic.period), starts, status == CpSolverStatus.OPTIMAL));
    }

    private StationId place(int soak) {
        return soak == 0 || soak > line.tanks().size() ? line.loading() : line.tanks().get(soak - 1);
    }

    private HandsTask move(int number, int round, int most) {
        IntVar start = model.newIntVar(0, most, "");
        IntVar end = model.newIntVar(0, most + line.moveSeconds()[number], "");
        model.addEquality(end, LinearExpr.affine(start, 1, line.moveSeconds()[number]));
        if (round == 1) {
            model.addEquality(LinearExpr.newBuilder().add(start).addTerm(period, -1).build(),
                    moves.get(number).start());
        }
        Literal always = model.trueLiteral();
        return new HandsTask(start, end, Map.of(place(number), always), Map.of(place(number + 1), always),
                Map.of(new BadgeId("HANDS"), always));
    }

    private void state() {
        WalkingOrder order = new WalkingOrder(model, line.walking());
        model.addEquality(moves.getFirst().start(), 0);
        for (int i = 0; i < moves.size(); i++) {
            model.addLessOrEqual(moves.get(i).end(), period);
            for (int j = 0; j < moves.size(); j++) {
                if (i < j) {
                    order.inAnyOrder(moves.get(i), moves.get(j));
                }
                if (i != j) {
                    order.inOrder(moves.get(i), nextMoves.get(j));
                }
            }
        }
        for (int tank = 0; tank < line.tanks().size(); tank++) {
            soak(tank);
        }
        model.minimize(period);
    }

    /** The carrier put in by a move is taken out by the next one, in this round or in the one after. */
    private void soak(int tank) {
        Literal nextRound = model.newBoolVar("");
        soak(tank, moves.get(tank + 1).start(), nextRound.not());
        soak(tank, nextMoves.get(tank + 1).start(), nextRound);
    }

    private void soak(int tank, IntVar out, Literal where) {
        LinearExprBuilder soak = LinearExpr.newBuilder().add(out).addTerm(moves.get(tank).end(), -1);
        model.addGreaterOrEqual(soak.build(), line.soakMinSeconds()[tank]).onlyEnforceIf(where);
        line.soakMaxSeconds()[tank].ifPresent(
                most -> model.addLessOrEqual(soak.build(), most).onlyEnforceIf(where));
    }
}
