package brightseam.demo;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.scheduling.config.ScheduledTask;
import org.springframework.scheduling.config.ScheduledTaskHolder;
import org.springframework.stereotype.Component;

/**
 * Lets the server look now at everything that it looks at every second. Whoever skips the clock needs it, and while the
 * demo's past is played no schedule runs yet.
 */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class Watches {

    private static final String OURS = "brightseam.";

    private final Iterable<ScheduledTaskHolder> holders;

    Watches(ObjectProvider<ScheduledTaskHolder> holders) {
        this.holders = holders;
    }

    /** Looks once at everything. */
    void look() {
        for (ScheduledTaskHolder holder : holders) {
            holder.getScheduledTasks().stream().map(ScheduledTask::getTask)
                    .filter(task -> task.toString().startsWith(OURS))
                    .forEach(task -> task.getRunnable().run());
        }
    }
}
