package brightseam.ui.chamber;

import brightseam.kernel.Refusal;
import brightseam.people.Person;
import brightseam.session.Lock;
import brightseam.session.shell.SessionView;
import brightseam.weld.BackSide;
import brightseam.weld.MapJoint;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Writes what has to hold before an arc. Whether it holds is what the joints answer; here their answers are only put
 * beside the condition that they speak of, with the value that is shown.
 */
final class Conditions {

    /** What an answer speaks of, told by its code. */
    private enum About {
        BACK_SIDE(code -> code.startsWith("joint-back-side")),
        FILLER(code -> code.startsWith("joint-filler") || code.equals("joint-wrong-filler")),
        WELDER(code -> code.startsWith("not-qualified") || code.startsWith("qualification")
                || code.equals("not-active") || code.equals("joint-welder-busy")),
        MOISTURE(code -> code.contains("moisture")),
        OXYGEN(code -> code.contains("oxygen") || code.equals("dwell-running") || code.equals("meter-not-usable")
                || code.equals("chamber-not-purged")),
        LOCK(code -> code.contains("door-open")),
        PIECES(code -> code.startsWith("joint-pieces") || code.contains("window")),
        BESIDES(code -> true);

        private final Predicate<String> speaks;

        About(Predicate<String> speaks) {
            this.speaks = speaks;
        }

        static About of(Refusal refusal) {
            return List.of(values()).stream().filter(about -> about.speaks.test(refusal.code())).findFirst()
                    .orElse(BESIDES);
        }
    }

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private final Wording wording;
    private final ZoneId zone;

    Conditions(Wording wording, ZoneId zone) {
        this.wording = wording;
        this.zone = zone;
    }

    /**
     * The conditions in the order in which a welder looks at them.
     *
     * @param against everything that stands against the arc now
     */
    List<Live.Condition> of(SessionView view, MapJoint plan, ReadyFor ready, Person welder, List<Refusal> against) {
        Map<About, List<Refusal>> by = new EnumMap<>(About.class);
        against.forEach(refusal -> by.computeIfAbsent(About.of(refusal), any -> new ArrayList<>()).add(refusal));
        List<Live.Condition> conditions = new ArrayList<>();
        conditions.add(line(by, About.BACK_SIDE, "Back side " + word(plan.backSide()), backSide(plan, ready),
                plan.backSide() != BackSide.OPEN && !ready.backSide()));
        conditions.add(line(by, About.FILLER, "Filler", plan.filler().isEmpty() ? "none: edges alone"
                : ready.filler().map(Object::toString).orElse("scan it"),
                plan.filler().isPresent() && ready.filler().isEmpty()));
        conditions.add(line(by, About.WELDER, "Welder", welder(welder), false));
        StripWriter strip = new StripWriter(zone);
        Gauge oxygen = strip.oxygen(view);
        conditions.add(line(by, About.OXYGEN, "Oxygen", oxygen.quantity() + ", " + oxygen.limit(), false));
        view.gas().limits().flatMap(limits -> limits.moisturePpmMax()).ifPresent(most -> {
            Gauge moisture = StripWriter.gauge("Moisture", view.gas().moisture(), java.util.Optional.of(most),
                    view.session().phase());
            conditions.add(line(by, About.MOISTURE, "Moisture", moisture.quantity() + ", " + moisture.limit(), false));
        });
        if (view.session().lockStation().isPresent()) {
            boolean inner = view.session().lock().doors() == Lock.Doors.INNER_OPEN;
            conditions.add(line(by, About.LOCK, "Lock", inner ? "inner door open: shut it" : "inner door shut", inner));
        }
        conditions.add(line(by, About.PIECES, "Pieces", "inside, windows open", false));
        by.getOrDefault(About.BESIDES, List.of()).forEach(refusal -> {
            Explanation why = wording.explain(refusal);
            conditions.add(new Live.Condition(why.word(), why.reason(), Live.Standing.BROKEN));
        });
        return conditions;
    }

    private Live.Condition line(Map<About, List<Refusal>> by, About about, String words, String value, boolean asked) {
        List<Refusal> broken = by.getOrDefault(about, List.of());
        if (asked) {
            return new Live.Condition(words, value, Live.Standing.ASKED);
        }
        return broken.isEmpty() ? new Live.Condition(words, value, Live.Standing.HOLDS)
                : new Live.Condition(words, wording.explain(broken.getFirst()).reason(), Live.Standing.BROKEN);
    }

    private static String word(BackSide side) {
        return switch (side) {
            case PURGED -> "purged";
            case VENTED -> "vented";
            case OPEN -> "open";
        };
    }

    private static String backSide(MapJoint plan, ReadyFor ready) {
        return switch (plan.backSide()) {
            case PURGED -> ready.backSide() ? "seen: argon flows through" : "look at it, then confirm";
            case VENTED -> ready.backSide() ? "seen: vent open" : "look at it, then confirm";
            case OPEN -> plan.backSideReason().orElse("by the map");
        };
    }

    private String welder(Person welder) {
        return welder.name() + welder.qualifiedUntil("weld").map(until -> ", qualified until "
                + DAY.format(until.atZone(zone))).orElse("");
    }
}
