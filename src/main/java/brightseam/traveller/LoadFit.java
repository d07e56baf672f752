package brightseam.traveller;

import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Gap;
import brightseam.procedure.Mix;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether a load fits together at a step, and at those behind it that a short gap hurries it into: what could not be
 * parted between acid and rinse is parted before the acid.
 */
final class LoadFit {

    private final StepId step;
    private final List<LoadMember> load;
    private final List<TravellerId> takeOut;

    private LoadFit(StepId step, List<LoadMember> load, List<TravellerId> takeOut) {
        this.step = step;
        this.load = load;
        this.takeOut = takeOut;
    }

    /** What does not fit, with who has to be taken out; a procedure that lacks the step is left to its own rules. */
    static List<Refusal> broken(StepId step, List<LoadMember> load) {
        List<LoadMember> known = load.stream().filter(member -> member.find(step).isPresent()).toList();
        if (known.size() < 2 || fits(step, known)) {
            return List.of();
        }
        List<LoadMember> staying = mostThatFit(step, known);
        return new LoadFit(step, known, LoadRules.ids(known.stream()
                .filter(member -> !staying.contains(member)).toList())).broken();
    }

    /** The largest group that stays together, grown from each traveller in turn; the first of equal ones. */
    private static List<LoadMember> mostThatFit(StepId step, List<LoadMember> load) {
        return load.stream().map(seed -> grown(step, seed, load))
                .max(Comparator.<List<LoadMember>>comparingInt(List::size)).orElseThrow();
    }

    private static List<LoadMember> grown(StepId step, LoadMember seed, List<LoadMember> load) {
        List<LoadMember> group = new ArrayList<>(List.of(seed));
        load.stream().filter(member -> !member.equals(seed)).forEach(member -> {
            group.add(member);
            if (!fits(step, group)) {
                group.remove(member);
            }
        });
        return group;
    }

    private static boolean fits(StepId step, List<LoadMember> load) {
        return new LoadFit(step, load, List.of()).broken().isEmpty();
    }

    private List<Refusal> broken() {
        List<Refusal> broken = new ArrayList<>();
        StepId at = step;
        while (true) {
            List<Step> steps = stepsOf(at);
            broken.addAll(clashes(steps));
            Optional<Gap> hurry = LoadRules.hurry(steps);
            if (hurry.isEmpty()) {
                return broken;
            }
            Optional<StepId> next = common(at);
            if (next.isEmpty()) {
                broken.add(new LoadRefusal.WaysPart(at, hurry.get().maximum(), takeOut));
                return broken;
            }
            at = next.get();
        }
    }

    private List<Step> stepsOf(StepId at) {
        return load.stream().map(member -> member.procedure().step(at)).toList();
    }

    private List<Refusal> clashes(List<Step> steps) {
        StepId at = steps.getFirst().id();
        if (!steps.stream().allMatch(one -> LoadLimits.isSame(steps.getFirst(), one))) {
            return List.of(new LoadRefusal.StepsDiffer(at, takeOut));
        }
        List<Refusal> clashes = new ArrayList<>();
        LoadLimits.clashes(steps).forEach(clash -> {
            switch (clash) {
                case HOLD -> clashes.add(holds(at));
                case READING -> LoadLimits.unmet(steps).forEach(label ->
                        clashes.add(new LoadRefusal.ReadingsDoNotMeet(at, label, takeOut)));
                case GLOVES -> clashes.add(new LoadRefusal.GlovesDiffer(at, LoadLimits.gloves(steps), takeOut));
                case BINS -> clashes.add(new LoadRefusal.BinsDiffer(at, takeOut));
            }
        });
        List<String> grades = load.stream().map(LoadMember::grade).distinct().sorted().toList();
        if (grades.size() > 1 && steps.stream().anyMatch(one -> one.mix() == Mix.SAME_GRADE)) {
            clashes.add(new LoadRefusal.GradesMixed(at, grades, takeOut));
        }
        return clashes;
    }

    private Refusal holds(StepId at) {
        LoadMember longer = load.stream().max(Comparator.comparing(member ->
                member.procedure().step(at).hold().orElseThrow().minimum())).orElseThrow();
        LoadMember shorter = load.stream().filter(member -> longest(member, at).isPresent())
                .min(Comparator.comparing(member -> longest(member, at).orElseThrow())).orElseThrow();
        return new LoadRefusal.HoldsDoNotMeet(at, longer.id(),
                longer.procedure().step(at).hold().orElseThrow().minimum(), shorter.id(),
                longest(shorter, at).orElseThrow(), takeOut);
    }

    private static Optional<Duration> longest(LoadMember member, StepId at) {
        return member.procedure().step(at).hold().orElseThrow().maximum();
    }

    /** The step behind {@code at} where it is the same one for every procedure of the load. */
    private Optional<StepId> common(StepId at) {
        List<Optional<Step>> behind = load.stream().map(member -> behind(member.procedure(), at)).toList();
        Optional<Step> first = behind.getFirst();
        return first.filter(step -> behind.stream().allMatch(other ->
                other.filter(one -> LoadLimits.isSame(step, one)).isPresent())).map(Step::id);
    }

    private static Optional<Step> behind(Procedure procedure, StepId at) {
        int next = procedure.position(at) + 1;
        return next < procedure.steps().size() ? Optional.of(procedure.steps().get(next)) : Optional.empty();
    }
}
