package brightseam.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.springframework.beans.factory.DisposableBean;

/** Has open pages look at the clock again; pushed, so that it does not count as somebody touching the tablet. */
@org.springframework.stereotype.Component
public class Pulse implements DisposableBean {

    private final ScheduledExecutorService beats = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "page-pulse");
        thread.setDaemon(true);
        return thread;
    });

    /** From the next attach on, runs {@code look} in the page's own session every {@code period} of real time. */
    public void every(Component page, Duration period, Runnable look) {
        page.addAttachListener(attached -> {
            UI ui = attached.getUI();
            Future<?> beat = beats.scheduleAtFixedRate(() -> beat(ui, look),
                    period.toMillis(), period.toMillis(), TimeUnit.MILLISECONDS);
            page.addDetachListener(detached -> {
                detached.unregisterListener();
                beat.cancel(false);
            });
        });
    }

    @Override
    public void destroy() {
        beats.shutdownNow();
    }

    private static void beat(UI ui, Runnable look) {
        if (ui.isAttached()) {
            ui.access(look::run);
        }
    }
}
