package brightseam.weld;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The weld map of a kit: what is being drawn and what was issued. Welding follows the last issue alone.
 *
 * @param kit whose joints
 * @param draft the sheet that is being worked on; the same as the last issue where nothing was changed since
 * @param issues every sheet that was issued, the first one first
 */
public record WeldMap(KitId kit, MapSheet draft, List<Issue> issues) {

    /**
     * One issue.
     *
     * @param number from 1
     * @param sheet what it says
     * @param at when it was issued
     * @param by the printed name of the lead who issued it
     */
    public record Issue(int number, MapSheet sheet, Moment at, String by) {}

    /** A joint as the last issue plans it. */
    public record Planned(int issue, MapJoint joint) {}

    /** Copies the list. */
    public WeldMap {
        issues = List.copyOf(issues);
    }

    /** The map after {@code event}; {@code before} is empty for the first one only. */
    public static WeldMap evolve(Optional<WeldMap> before, WeldMapEvent event) {
        return switch (event) {
            case WeldMapEvent.Begun e -> new WeldMap(e.kit(), e.sheet(), List.of());
            case WeldMapEvent.Redrawn e -> known(before, e).drawn(e.sheet());
            case WeldMapEvent.JointMoved e -> known(before, e).moved(e);
            case WeldMapEvent.Issued e -> known(before, e).issued(e);
        };
    }

    /** The last issue; empty where the map was never issued. */
    public Optional<Issue> current() {
        return issues.isEmpty() ? Optional.empty() : Optional.of(issues.getLast());
    }

    /** Whether the draft says something that the last issue does not. */
    public boolean isChanged() {
        return current().filter(last -> last.sheet().equals(draft)).isEmpty();
    }

    /** How the last issue plans joint {@code number}. */
    public Optional<Planned> planned(String number) {
        return current().flatMap(last -> last.sheet().joint(number).map(joint -> new Planned(last.number(), joint)));
    }

    private static WeldMap known(Optional<WeldMap> before, WeldMapEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not begun: " + event.kit()));
    }

    private WeldMap drawn(MapSheet sheet) {
        return new WeldMap(kit, sheet, issues);
    }

    private WeldMap moved(WeldMapEvent.JointMoved event) {
        return drawn(draft.with(draft.joints().stream()
                .map(joint -> joint.number().equals(event.number()) ? joint.at(Optional.of(event.spot())) : joint)
                .toList()));
    }

    private WeldMap issued(WeldMapEvent.Issued event) {
        Issue next = new Issue(event.issue(), draft, event.origin().at(), event.signer().name());
        return new WeldMap(kit, draft, Stream.concat(issues.stream(), Stream.of(next)).toList());
    }
}
