package brightseam.app;

import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.shell.LastEntries;
import brightseam.ledger.shell.Lead;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnExpression;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Makes the one clock: the demo shop's where the property {@code brightseam.shop} is {@code demo}. No clock runs over
 * records of the other kind of shop, and without a clock nothing is recorded.
 */
@Configuration(proxyBeanMethods = false)
class ClockSetup {

    private static final int ENTRIES_LOOKED_AT = 200;
    private static final Pattern ELAPSED = Pattern.compile("\"elapsed_millis\":(\\d{1,15})");

    private final MachineClocks clocks = new MachineClocks();

    @Bean(initMethod = "start", destroyMethod = "close")
    @ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
    HurriedClock demoClock(JdbcClient jdbc, LastEntries ledger, Lead lead, Environment settings,
            @Value("${brightseam.demo-speed:1}") double speed) {
        double checked = HurriedClock.checked(speed);
        if (!ShopDatabase.isServer(settings)) {
            ClockRow row = new ClockRow(jdbc);
            return new HurriedClock(line(row.read(), ledger, true, checked, clocks.sample()), clocks::sample,
                    row::write);
        }
        NodesClock nodes = new NodesClock(jdbc, lead);
        return nodes.keeping(new HurriedClock(line(nodes, ledger, true, checked), clocks::sample, nodes));
    }

    @Bean(initMethod = "start", destroyMethod = "close")
    @ConditionalOnExpression("'${brightseam.shop:empty}' != 'demo'")
    RunningClock shopClock(JdbcClient jdbc, LastEntries ledger, Lead lead, Environment settings) {
        if (!ShopDatabase.isServer(settings)) {
            ClockRow row = new ClockRow(jdbc);
            return new RunningClock(line(row.read(), ledger, false, 1, clocks.sample()), clocks::sample, row::write);
        }
        NodesClock nodes = new NodesClock(jdbc, lead);
        return nodes.keeping(new RunningClock(line(nodes, ledger, false, 1), clocks::sample, nodes));
    }

    /** Between machines the database's wall time is compared, and a clock that others keep running has its speed. */
    private TimeLine line(NodesClock nodes, LastEntries ledger, boolean demo, double speed) {
        Optional<NodesClock.Noted> noted = nodes.read();
        TimeLine.Sample here = clocks.sample();
        TimeLine.Sample now = new TimeLine.Sample(here.nanos(),
                noted.map(NodesClock.Noted::databaseNow).orElse(here.wall()), here.bootId(), here.uptimeMillis());
        TimeLine own = line(noted.map(NodesClock.Noted::anchor), ledger, demo, speed, now);
        return noted.filter(NodesClock.Noted::isFresh)
                .map(row -> own.standingAt(Math.max(own.elapsedMillis(), row.elapsedMillis()), row.wall(),
                        row.speed(), now))
                .orElse(own);
    }

    private TimeLine line(Optional<TimeLine.Anchor> noted, LastEntries ledger, boolean demo, double speed,
            TimeLine.Sample now) {
        ShopKind.of(demo).refuseRecordsOfTheOther(ledger.last(ENTRIES_LOOKED_AT));
        return noted
                .map(anchor -> TimeLine.resume(anchor, elapsedMillisMin(ledger), demo, speed, now))
                .orElseGet(() -> TimeLine.begin(demo, speed, now).begunEarlier(
                        demo ? DemoClock.HEAD_START : Duration.ZERO));
    }

    /** The latest elapsed time among the last stored events; time never runs back behind what was recorded. */
    private static long elapsedMillisMin(LastEntries ledger) {
        return ledger.last(ENTRIES_LOOKED_AT).stream()
                .flatMap(entry -> ELAPSED.matcher(entry.json()).results())
                .mapToLong(found -> Long.parseLong(found.group(1)))
                .max()
                .orElse(0);
    }
}
