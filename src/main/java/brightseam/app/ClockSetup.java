package brightseam.app;

import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.shell.LastEntries;
import java.time.Duration;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnExpression;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
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
    HurriedClock demoClock(JdbcClient jdbc, LastEntries ledger, @Value("${brightseam.demo-speed:1}") double speed) {
        ClockRow row = new ClockRow(jdbc);
        return new HurriedClock(line(row, ledger, true, HurriedClock.checked(speed)), clocks::sample, row::write);
    }

    @Bean(initMethod = "start", destroyMethod = "close")
    @ConditionalOnExpression("'${brightseam.shop:empty}' != 'demo'")
    RunningClock shopClock(JdbcClient jdbc, LastEntries ledger) {
        ClockRow row = new ClockRow(jdbc);
        return new RunningClock(line(row, ledger, false, 1), clocks::sample, row::write);
    }

    private TimeLine line(ClockRow row, LastEntries ledger, boolean demo, double speed) {
        ShopKind.of(demo).refuseRecordsOfTheOther(ledger.last(ENTRIES_LOOKED_AT));
        TimeLine.Sample now = clocks.sample();
        return row.read()
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
