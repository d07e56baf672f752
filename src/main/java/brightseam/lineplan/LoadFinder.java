package brightseam.lineplan;

import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.Guide;
import brightseam.traveller.Phase;
import brightseam.traveller.StepRun;
import brightseam.traveller.Traveller;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Finds what stands at the cleaning line: the stretch of a procedure from its first soak to the step before the next
 * inspection point.
 */
final class LoadFinder {

    private LoadFinder() {}

    /** Everything among {@code lots} that is on the line now, what lies together as one load, sorted by label. */
    static List<LineLoad> loads(List<LineLoad.Lot> lots) {
        Map<String, List<LineLoad.Lot>> together = new TreeMap<>();
        for (LineLoad.Lot lot : lots) {
            List<Step> ahead = ahead(lot);
            if (!ahead.isEmpty()) {
                together.computeIfAbsent(label(lot) + " " + ahead.getFirst().id(), key -> new ArrayList<>()).add(lot);
            }
        }
        List<LineLoad> loads = new ArrayList<>();
        for (List<LineLoad.Lot> some : together.values()) {
            String label = label(some.getFirst());
            boolean taken = loads.stream().anyMatch(load -> load.label().equals(label));
            loads.add(new LineLoad(taken ? some.getFirst().traveller().id().value() : label, some,
                    ahead(some.getFirst())));
        }
        return loads;
    }

    /** Whether the line is still before it: it stands at a step ahead of its first soak. */
    static boolean isUpstream(LineLoad.Lot lot) {
        Optional<StepId> current = lot.traveller().currentStep();
        List<Step> line = line(lot.procedure());
        return lot.traveller().phase() == Phase.ACTIVE && current.isPresent() && !line.isEmpty()
                && lot.procedure().position(current.get()) < lot.procedure().position(line.getFirst().id());
    }

    /** The steps of the line in {@code procedure}; none where it has no soak. */
    static List<Step> line(Procedure procedure) {
        return procedure.steps().stream()
                .dropWhile(step -> step.kind() != StepKind.SOAK)
                .takeWhile(step -> !step.isInspectionPoint() && step.kind() != StepKind.PASS_IN)
                .toList();
    }

    /** What is still to do on the line: the step whose hold runs or that comes next, and what follows it. */
    private static List<Step> ahead(LineLoad.Lot lot) {
        Traveller traveller = lot.traveller();
        if (traveller.phase() != Phase.ACTIVE || isUpstream(lot)) {
            return List.of();
        }
        List<Step> ahead = line(lot.procedure()).stream()
                .dropWhile(step -> isDone(traveller, step)).toList();
        if (!traveller.isInQuarantine() || ahead.isEmpty()) {
            return ahead;
        }
        boolean inIt = traveller.run(ahead.getFirst().id()).filter(StepRun::isHolding).isPresent();
        boolean hurried = Guide.gap(traveller, lot.procedure()).isPresent();
        List<Step> safe = ahead.stream().skip(inIt ? 1 : 0)
                .takeWhile(step -> step.kind().makesSafe()).toList();
        return inIt ? concat(ahead.getFirst(), safe) : hurried ? safe : List.of();
    }

    /** Done as far as the line is concerned: out of the hold, or signed. */
    private static boolean isDone(Traveller traveller, Step step) {
        return traveller.isSigned(step.id()) || step.hold().isPresent()
                && traveller.run(step.id()).filter(run -> run.holdEndedAt().isPresent()).isPresent();
    }

    private static String label(LineLoad.Lot lot) {
        return lot.traveller().placement().filter(where -> where.binClass() != BinClass.SEALED_BAG)
                .map(where -> where.bin().value()).orElse(lot.traveller().id().value());
    }

    private static List<Step> concat(Step first, List<Step> rest) {
        List<Step> all = new ArrayList<>(List.of(first));
        all.addAll(rest);
        return all;
    }
}
