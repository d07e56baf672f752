package brightseam.weld;

import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.people.Role;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What keeps a judgement from being given, each rule by itself, and the ruling that it is held against. */
final class JudgeRules {

    private final Joint state;
    private final JointCommand.Judge judge;
    private final JointId joint;
    private final ColourScale scale;
    private final Optional<AcceptanceTable> table;

    JudgeRules(Joint state, JointCommand.Judge judge) {
        this.state = state;
        this.judge = judge;
        this.joint = state.id();
        this.scale = judge.facts().scale();
        this.table = scale.table(state.plan().acceptance());
    }

    List<Refusal> objections() {
        List<Refusal> against = new ArrayList<>(inspector());
        against.addAll(joint());
        List<Refusal> form = form();
        against.addAll(form);
        against.addAll(light());
        if (form.isEmpty()) {
            against.addAll(verdict());
        }
        return against;
    }

    /** What the judgement is when nothing stands against it. */
    Judgement judgement() {
        return new Judgement(state.arcs().size(), judge.verdict(), judge.colours(), judge.findings(),
                judge.lighting(), judge.photographsSha256(), judge.remark(), state.plan().acceptance(), ruling(),
                next(), judge.facts().useAsIs(), judge.signer(), judge.origin().at());
    }

    private List<Refusal> inspector() {
        List<Refusal> against = new ArrayList<>();
        var badge = judge.signer().badge();
        if (!judge.signer().has(Role.INSPECTOR)) {
            against.add(new JudgeRefusal.JudgeNoInspector(joint, badge));
        } else if (judge.signer().stamp().isEmpty()) {
            against.add(new JudgeRefusal.JudgeStampMissing(joint, badge));
        }
        if (state.arcs().stream().anyMatch(arc -> arc.setting().welder().equals(badge))) {
            against.add(new JudgeRefusal.JudgeWelded(joint, badge));
        }
        return against;
    }

    private List<Refusal> joint() {
        List<Refusal> against = new ArrayList<>();
        Moment now = judge.origin().at();
        state.running().ifPresent(arc -> against.add(new ArcRefusal.ArcRunning(
                joint, arc.run(), arc.startedAt(), arc.setting().welderName())));
        if (!state.isWelded() && state.running().isEmpty()) {
            against.add(new JudgeRefusal.NotWelded(joint));
        }
        state.coolAt().filter(now::isBefore).ifPresent(cool ->
                against.add(new JudgeRefusal.StillHot(joint, cool, now)));
        if (!state.owed(now).isEmpty()) {
            against.add(new JudgeRefusal.EvidenceAwaited(joint));
        }
        state.judgement().filter(last -> !liftsReject(last)).ifPresent(last ->
                against.add(new JudgeRefusal.JudgedAlready(joint, last.verdict(), last.signer().name(), last.at())));
        return against;
    }

    private boolean liftsReject(Judgement last) {
        return last.verdict() == Verdict.REJECT && judge.verdict() == Verdict.ACCEPT
                && judge.facts().useAsIs().isPresent();
    }

    private List<Refusal> form() {
        List<Refusal> against = new ArrayList<>();
        Set<String> colours = new LinkedHashSet<>(judge.colours().onTheWeld());
        judge.colours().bandAtTheEdge().ifPresent(colours::add);
        List<String> unknown = colours.stream().filter(key -> scale.colour(key).isEmpty()).toList();
        List<String> strange = judge.findings().stream().map(FindingNote::kind)
                .filter(key -> scale.finding(key).isEmpty()).distinct().toList();
        if (judge.colours().onTheWeld().isEmpty()) {
            against.add(new JudgeRefusal.ColourMissing(joint));
        }
        if (!unknown.isEmpty()) {
            against.add(new JudgeRefusal.ColourNotKnown(joint, unknown));
        }
        if (!strange.isEmpty()) {
            against.add(new JudgeRefusal.FindingNotKnown(joint, strange));
        }
        if (table.isEmpty()) {
            against.add(new JudgeRefusal.TableNotKnown(joint, state.plan().acceptance()));
        }
        return against;
    }

    private List<Refusal> light() {
        List<Refusal> against = new ArrayList<>(judge.facts().lightMeter());
        if (judge.lighting().lux().compareTo(scale.luxMin()) < 0) {
            against.add(new JudgeRefusal.TooDark(joint, judge.lighting().lux(), scale.luxMin()));
        }
        int missing = judge.facts().photographsMissing().size();
        if (missing > 0) {
            against.add(new JudgeRefusal.PhotographsNotStored(joint, missing));
        }
        return against;
    }

    private List<Refusal> verdict() {
        return switch (judge.verdict()) {
            case ACCEPT -> accepting();
            case REJECT -> ruling() == Ruling.REJECT || judge.remark().isPresent() ? List.of()
                    : List.of(new JudgeRefusal.RejectWithoutReason(joint));
        };
    }

    private List<Refusal> accepting() {
        List<Refusal> against = new ArrayList<>();
        boolean decided = judge.facts().useAsIs().isPresent();
        findings().filter(kind -> kind.ruling() == Ruling.REJECT && (!decided || !kind.forgivable()))
                .map(kind -> kind.forgivable()
                        ? new JudgeRefusal.FindingRejects(joint, kind.name(), kind.next().orElse(""))
                        : new JudgeRefusal.FindingNeverAccepted(joint, kind.name(), kind.next().orElse("")))
                .forEach(against::add);
        if (!decided) {
            if (!judge.colours().beforeBrushing()) {
                against.add(new JudgeRefusal.BrushedBeforeJudged(joint));
            }
            if (colour() instanceof ColourVerdict.Reject reject) {
                against.add(new JudgeRefusal.ColourRejects(joint, names(reject.colours()),
                        table.orElseThrow().title(), String.join("; ", reject.next())));
            }
        }
        if (ruling() == Ruling.CONDITIONAL && judge.remark().isEmpty()) {
            against.add(new JudgeRefusal.ConditionUnanswered(joint, String.join("; ", next())));
        }
        return against;
    }

    private ColourVerdict colour() {
        return ColourRules.judge(table.orElseThrow(), judge.colours());
    }

    private Ruling ruling() {
        return findings().map(FindingKind::ruling).reduce(colour().ruling(), Ruling::worse);
    }

    private List<String> next() {
        Set<String> next = new LinkedHashSet<>();
        switch (colour()) {
            case ColourVerdict.Accept ignored -> { }
            case ColourVerdict.Conditional conditional -> next.addAll(conditional.next());
            case ColourVerdict.Reject reject -> next.addAll(reject.next());
        }
        findings().flatMap(kind -> kind.next().stream()).forEach(next::add);
        return List.copyOf(next);
    }

    private java.util.stream.Stream<FindingKind> findings() {
        return judge.findings().stream().map(FindingNote::kind).distinct()
                .flatMap(key -> scale.finding(key).stream());
    }

    private List<String> names(List<String> colours) {
        return colours.stream().map(key -> scale.colour(key).map(WeldColour::name).orElse(key)).toList();
    }
}
