package brightseam.ui.trace;

import brightseam.kernel.TravellerId;
import brightseam.trace.Reached;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.ui.parts.SpanChart;
import brightseam.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Answers as pictures: a time line with a bar for every contact. */
final class Pictures {

    private Pictures() {}

    /** Travellers as rows; those under suspicion striped. */
    static SpanChart ofThing(String thing, List<Reached> page, List<Touch> touches, Instant now, ZoneId zone) {
        Map<TravellerId, List<Touch>> byTraveller = touches.stream().collect(Collectors.groupingBy(Touch::traveller));
        List<SpanChart.Row> rows = page.stream().map(reached -> new SpanChart.Row(
                reached.now().traveller() + (reached.now().suspect() ? " suspect" : ""), reached.now().suspect(),
                bars(byTraveller.getOrDefault(reached.now().traveller(), List.of())))).toList();
        return new SpanChart("When " + thing + " touched "
                + Words.count(page.size(), "traveller", "travellers") + "; suspects are striped.", rows, now, zone);
    }

    /** Things as rows, in the order in which they touched the pieces; heat and kit, which last, are left out. */
    static SpanChart ofPieces(String pieces, List<Touch> touches, Instant now, ZoneId zone) {
        Map<Thing, List<Touch>> byThing = touches.stream()
                .filter(touch -> touch.thing().kind() != ThingKind.HEAT && touch.thing().kind() != ThingKind.KIT)
                .collect(Collectors.groupingBy(Touch::thing, LinkedHashMap::new, Collectors.toList()));
        List<SpanChart.Row> rows = byThing.entrySet().stream().map(entry -> new SpanChart.Row(
                TraceWords.thing(entry.getKey()), false, bars(entry.getValue()))).toList();
        return new SpanChart("What touched " + pieces + ", from the first contact at the top to the last.", rows, now,
                zone);
    }

    private static List<SpanChart.Bar> bars(List<Touch> touches) {
        return touches.stream().map(touch -> new SpanChart.Bar(touch.from(), touch.until())).toList();
    }
}
