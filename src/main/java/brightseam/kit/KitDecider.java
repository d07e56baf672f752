package brightseam.kit;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Decides what a {@link KitCommand} does to a kit. */
public final class KitDecider {

    private KitDecider() {}

    /** The events that follow from {@code command}, or every {@link KitRefusal} against it. */
    public static Decision<KitEvent> decide(Optional<Kit> kit, KitCommand command) {
        return kit.map(known -> onKnown(known, command)).orElseGet(() -> onUnknown(command));
    }

    private static Decision<KitEvent> onUnknown(KitCommand command) {
        return command instanceof KitCommand.OpenKit first
                ? Decision.accepted(List.of(
                        new KitEvent.Opened(first.origin(), first.kit(), first.title(), first.sessionDue())))
                : Decision.refused(List.of(new KitRefusal.KitUnknown(command.kit())));
    }

    private static Decision<KitEvent> onKnown(Kit kit, KitCommand command) {
        return switch (command) {
            case KitCommand.OpenKit ignored ->
                Decision.refused(List.of(new KitRefusal.KitAlreadyOpened(kit.id(), kit.title())));
            case KitCommand.ChangeSessionDue change -> stillOpen(kit)
                    .accept(change.sessionDue().equals(kit.sessionDue())
                            ? List.of()
                            : List.of(new KitEvent.SessionDueChanged(change.origin(), kit.id(), change.sessionDue())));
            case KitCommand.AddLines add -> addLines(kit, add);
            case KitCommand.SetNeeds set -> setNeeds(kit, set);
            case KitCommand.CloseKit close -> stillOpen(kit).accept(new KitEvent.Closed(close.origin(), kit.id()));
        };
    }

    private static Decision<KitEvent> addLines(Kit kit, KitCommand.AddLines command) {
        List<Integer> taken = taken(kit, command.lines());
        int lines = kit.lines().size() + command.lines().size();
        return stillOpen(kit)
                .refuseIf(!taken.isEmpty(), () -> new KitRefusal.LineNumbersTaken(kit.id(), taken))
                .refuseIf(
                        lines > PartsList.LINES_MAX,
                        () -> new KitRefusal.TooManyLines(kit.id(), lines, PartsList.LINES_MAX))
                .accept(new KitEvent.LinesAdded(command.origin(), kit.id(), command.lines()));
    }

    private static Decision<KitEvent> setNeeds(Kit kit, KitCommand.SetNeeds command) {
        Set<String> seen = new HashSet<>();
        List<String> twice = command.needs().stream().map(SetNeed::type).filter(type -> !seen.add(type)).distinct()
                .sorted().toList();
        return stillOpen(kit)
                .refuseIf(!twice.isEmpty(), () -> new KitRefusal.NeedTwice(kit.id(), twice))
                .accept(kit.needs().filter(command.needs()::equals).isPresent() ? List.of()
                        : List.of(new KitEvent.NeedsSet(command.origin(), kit.id(), command.needs())));
    }

    private static List<Integer> taken(Kit kit, List<KitLine> lines) {
        Set<Integer> seen =
                kit.lines().stream().map(KitLine::lineNumber).collect(Collectors.toCollection(HashSet::new));
        return lines.stream().map(KitLine::lineNumber).filter(number -> !seen.add(number)).toList();
    }

    private static Rules stillOpen(Kit kit) {
        return Rules.check().refuseIf(kit.closed(), () -> new KitRefusal.KitClosed(kit.id()));
    }
}
