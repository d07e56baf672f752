package brightseam.lineplan.shell;

import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import brightseam.lineplan.LineOrders;
import brightseam.lineplan.LineSituation;
import brightseam.lineplan.PlanStanding;
import brightseam.planner.Answer;
import brightseam.planner.Plan;
import brightseam.planner.shell.PlanSolver;
import brightseam.planner.shell.SolverSettings;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Makes the plan on one thread of its own, for as long as anybody follows it. */
@Component
class Planning implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Planning.class);
    /** What bears on the plan. */
    private static final Set<String> FAMILIES = Set.of("traveller", "station", "bath", "kit", "line-orders");
    /** Changes that come together, such as a load's, are planned together. */
    private static final long TOGETHER_MILLIS = 250;
    private static final long LOOK_MILLIS = 2_000;

    private final LineNow line;
    private final ShopClock clock;
    private final Ledger ledger;
    private final SolverSettings settings;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "line-plan");
        made.setDaemon(true);
        return made;
    });
    private final Set<Follower> followers = ConcurrentHashMap.newKeySet();
    private final AtomicBoolean asked = new AtomicBoolean();
    private volatile Optional<PlanStanding> current = Optional.empty();
    private volatile boolean busy;
    private Optional<Subscription> subscription = Optional.empty();

    private record Follower(Supplier<LineOrders> orders, Runnable changed, Object key) {}

    Planning(LineNow line, ShopClock clock, Ledger ledger, @Value("${brightseam.plan-time:PT2S}") Duration limit) {
        this.line = line;
        this.clock = clock;
        this.ledger = ledger;
        this.settings = SolverSettings.within(limit);
        thread.scheduleWithFixedDelay(this::look, LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }

    Optional<PlanStanding> current() {
        return current;
    }

    boolean isBusy() {
        return busy || asked.get();
    }

    synchronized Runnable follow(Supplier<LineOrders> orders, Runnable changed) {
        Follower follower = new Follower(orders, changed, new Object());
        followers.add(follower);
        if (subscription.isEmpty()) {
            subscription = Optional.of(ledger.onStored(this::stored));
        }
        ask(0);
        return () -> unfollow(follower);
    }

    private synchronized void unfollow(Follower follower) {
        followers.remove(follower);
        if (followers.isEmpty()) {
            subscription.ifPresent(Subscription::close);
            subscription = Optional.empty();
        }
    }

    private void stored(List<Entry> entries) {
        if (entries.stream().anyMatch(entry -> FAMILIES.contains(entry.stream().family()))) {
            ask(TOGETHER_MILLIS);
        }
    }

    private void ask(long inMillis) {
        if (asked.compareAndSet(false, true)) {
            thread.schedule(this::plan, inMillis, TimeUnit.MILLISECONDS);
        }
    }

    /** Something that should have been done by now was not: what follows has moved too. */
    private void look() {
        if (!followers.isEmpty() && current.filter(standing -> standing.isOverdue(clock.now())).isPresent()) {
            ask(0);
        }
    }

    private void plan() {
        asked.set(false);
        busy = true;
        boolean changed = true;
        try {
            Optional<Follower> any = followers.stream().findAny();
            if (any.isPresent()) {
                changed = make(line.read(any.get().orders().get()));
            }
        } catch (RuntimeException | LinkageError failed) {
            LOG.error("the plan of the line could not be made", failed);
        } finally {
            busy = false;
            if (changed) {
                tell();
            }
        }
    }

    /** Makes the plan for {@code now}; answers whether there is anything to tell. */
    private boolean make(LineSituation now) {
        if (now.loads().isEmpty()) {
            current = Optional.empty();
            return true;
        }
        if (current.filter(standing -> now.isAs(standing.situation()) && !standing.isOverdue(now.at())
                && standing.plan().isPresent()).isPresent()) {
            return false;
        }
        Optional<Plan> previous = current.flatMap(standing -> standing.planSeenAt(now.at()));
        current = Optional.of(solve(now, previous, better -> {
            current = Optional.of(new PlanStanding(now, better));
            tell();
        }));
        return true;
    }

    PlanStanding solve(LineSituation now, Optional<Plan> previous, Consumer<Answer.Planned> better) {
        Answer answer = new PlanSolver(settings).solve(now.problem(), previous, better);
        boolean sessionsStandInTheWay = !(answer instanceof Answer.Planned) && !now.problem().sessions().isEmpty();
        Optional<Answer.Planned> instead = sessionsStandInTheWay
                ? planned(new PlanSolver(settings).solve(now.withoutSessions(), previous, ignored -> { }))
                : Optional.empty();
        return new PlanStanding(now, answer, instead);
    }

    private static Optional<Answer.Planned> planned(Answer answer) {
        return answer instanceof Answer.Planned planned ? Optional.of(planned) : Optional.empty();
    }

    private void tell() {
        followers.forEach(follower -> follower.changed().run());
    }

    @Override
    public void destroy() {
        thread.shutdownNow();
    }
}
