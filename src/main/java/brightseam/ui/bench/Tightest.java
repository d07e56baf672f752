package brightseam.ui.bench;

import brightseam.kernel.Moment;
import brightseam.procedure.BinClass;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.traveller.NextAction;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Brings what one traveller of a load is to do inside the limits of all of them. */
final class Tightest {

    private final Load load;

    Tightest(Load load) {
        this.load = load;
    }

    /** {@code next}, which every one of them is to do, within everybody's limits. */
    NextAction of(NextAction next) {
        return switch (next) {
            case NextAction.PutInto put -> put(put);
            case NextAction.CloseBin close -> close;
            case NextAction.Begin begin -> new NextAction.Begin(step(begin), load.gap());
            case NextAction.Read read -> new NextAction.Read(
                    step(read), reading(step(read), read.reading()), read.again(), load.gap());
            case NextAction.BeginHold begin -> new NextAction.BeginHold(step(begin), load.gap());
            case NextAction.Holding holding -> holding(step(holding));
            case NextAction.Sign sign -> new NextAction.Sign(step(sign));
            case NextAction.AwaitStamp stamp -> new NextAction.AwaitStamp(step(stamp));
            case NextAction.AwaitSession inside -> new NextAction.AwaitSession(step(inside));
            case NextAction.AwaitDisposition stopped -> stopped;
            case NextAction.Ended ended -> ended;
        };
    }

    private Step step(NextAction next) {
        return load.step(next.about().orElseThrow().id());
    }

    private NextAction put(NextAction.PutInto put) {
        List<BinClass> common = put.classes().stream().filter(binClass -> all(NextAction.PutInto.class)
                .allMatch(other -> other.classes().contains(binClass))).toList();
        return new NextAction.PutInto(step(put), common.isEmpty() ? put.classes() : common, load.gap());
    }

    private NextAction holding(Step step) {
        List<NextAction.Holding> all = all(NextAction.Holding.class).toList();
        return new NextAction.Holding(step,
                all.stream().map(NextAction.Holding::begun).max(Comparator.naturalOrder()).orElseThrow(),
                all.stream().map(NextAction.Holding::earliest).max(Comparator.naturalOrder()).orElseThrow(),
                all.stream().flatMap(one -> one.latest().stream()).min(Comparator.<Moment>naturalOrder()));
    }

    private <A extends NextAction> Stream<A> all(Class<A> action) {
        return load.together().stream().map(card -> card.next()).filter(action::isInstance).map(action::cast);
    }

    private static ReadingSpec reading(Step step, ReadingSpec asked) {
        return step.readings().stream().filter(spec -> spec.id().equals(asked.id())).findFirst().orElse(asked);
    }
}
