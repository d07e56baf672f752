package brightseam.ui.parts;

import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;

/** Tells open screens what was stored, on whichever tablet it happened. */
@org.springframework.stereotype.Component
public class Changes {

    private final Ledger ledger;

    /** Listens to {@code ledger}. */
    public Changes(Ledger ledger) {
        this.ledger = ledger;
    }

    /**
     * From the next attach on, calls {@code refresh} in the screen's own session with the streams that have grown since
     * the last call; several changes that come together are told together. Ends when {@code screen} is detached.
     */
    public void follow(Component screen, Consumer<Set<StreamName>> refresh) {
        screen.addAttachListener(attached -> {
            Following following = new Following(attached.getUI(), refresh);
            Subscription subscription = ledger.onStored(entries ->
                    following.grown(entries.stream().map(entry -> entry.stream()).toList()));
            screen.addDetachListener(detached -> {
                detached.unregisterListener();
                subscription.close();
            });
        });
    }

    private static final class Following {
        private final UI ui;
        private final Consumer<Set<StreamName>> refresh;
        private final Set<StreamName> waiting = new HashSet<>();

        Following(UI ui, Consumer<Set<StreamName>> refresh) {
            this.ui = ui;
            this.refresh = refresh;
        }

        void grown(Iterable<StreamName> streams) {
            boolean first;
            synchronized (waiting) {
                first = waiting.isEmpty();
                streams.forEach(waiting::add);
            }
            if (first) {
                ui.access(() -> refresh.accept(taken()));
            }
        }

        private Set<StreamName> taken() {
            synchronized (waiting) {
                Set<StreamName> all = Set.copyOf(waiting);
                waiting.clear();
                return all;
            }
        }
    }
}
