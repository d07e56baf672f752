package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.traveller.Placement;
import brightseam.traveller.Traveller;
import brightseam.traveller.Window;
import brightseam.traveller.WindowEnd;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells the clean window as stretches of one handling in one bin. */
final class WindowTelling {

    private final List<WindowSpan> spans = new ArrayList<>();

    void changed(Traveller before, Traveller after, Moment at) {
        if (before.window() instanceof Window.Open was) {
            if (after.window() instanceof Window.Open) {
                if (!before.placement().equals(after.placement())) {
                    close(at, was, Optional.empty());
                    spans.add(span(false, after, at));
                }
            } else {
                close(at, was, after.window() instanceof Window.Ended ended
                        ? Optional.of(ended.why()) : Optional.<WindowEnd>empty());
            }
        } else if (after.window() instanceof Window.Open) {
            spans.add(span(true, after, at));
        }
    }

    List<WindowSpan> spans() {
        return List.copyOf(spans);
    }

    private static WindowSpan span(boolean opens, Traveller lot, Moment at) {
        Window.Open open = (Window.Open) lot.window();
        return new WindowSpan(opens, open.handling(), lot.placement().map(Placement::bin), at, Optional.empty(),
                Optional.empty(), Optional.empty());
    }

    private void close(Moment at, Window.Open was, Optional<WindowEnd> why) {
        WindowSpan last = spans.removeLast();
        Duration left = was.remaining(at);
        spans.add(new WindowSpan(last.opens(), last.handling(), last.bin(), last.from(), Optional.of(at),
                Optional.of(left), why));
    }
}
