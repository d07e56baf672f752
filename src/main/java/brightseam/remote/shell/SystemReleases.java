package brightseam.remote.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.kit.Kit;
import brightseam.kit.KitCommand;
import brightseam.kit.KitLine;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.remote.ReleaseLine;
import brightseam.remote.Scope;
import brightseam.remote.ShopSystem;
import brightseam.remote.SystemRefusal;
import brightseam.remote.SystemRelease;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.ReleaseOrder;
import brightseam.traveller.shell.Releases;
import brightseam.traveller.shell.Travellers;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/**
 * Releases travellers for a shop system, by the rules of the lead's release page and in the name of the lead who
 * answers for the system. Travellers, new lines of the parts list, a new kit and the key are one append.
 */
@Service
public class SystemReleases {

    private final EventStream<SystemRelease, SystemRelease.Done> keys;
    private final Releases releases;
    private final Travellers travellers;
    private final Kits kits;
    private final People people;

    /** Releases through {@code releases}. */
    public SystemReleases(Ledger ledger, Releases releases, Travellers travellers, Kits kits, People people) {
        this.keys = new EventStream<>(ledger, SystemStreams.RELEASES);
        this.releases = releases;
        this.travellers = travellers;
        this.kits = kits;
        this.people = people;
    }

    /**
     * What is asked.
     *
     * @param key what the system calls this release
     * @param contentSha256 SHA-256 of the canonical JSON of what it sent
     * @param title what people call the kit, where it is to be opened by this
     * @param sessionDue when the session of a new kit is due
     */
    public record Asked(String key, String contentSha256, KitId kit, Optional<String> title,
            Optional<Instant> sessionDue, List<ReleaseLine> lines) {
        /** Copies the list. */
        public Asked {
            lines = List.copyOf(lines);
        }
    }

    /** What came of it; {@code repeated} where it had been released before under the same key. */
    public record Answer(SystemRelease release, boolean repeated) {}

    /**
     * Releases every line of {@code asked} for {@code system}, or none.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was released then
     * @throws IllegalArgumentException where a text has a form that no parts list admits
     */
    public Outcome<Answer> release(ShopSystem system, Asked asked) {
        Optional<Outcome<Answer>> before = released(system, asked);
        if (before.isPresent()) {
            return before.get();
        }
        List<Refusal> against = against(system);
        if (!against.isEmpty()) {
            return new Outcome.Refused<>(against);
        }
        Actor actor = new Actor(system.answering().orElseThrow().badge(), Origin.SYSTEM + system.id());
        List<ReleaseOrder> orders = asked.lines().stream().map(line -> order(asked.kit(), line)).toList();
        Outcome<SystemRelease> outcome = releases.release(actor, orders, opens(asked),
                (origin, made) -> beside(origin, system, asked, made));
        return switch (outcome) {
            case Outcome.Done<SystemRelease> done ->
                    new Outcome.Done<>(new Answer(done.result(), false), done.entries());
            case Outcome.Refused<SystemRelease> refused ->
                    released(system, asked).orElseGet(() -> new Outcome.Refused<>(refused.refusals()));
        };
    }

    private Optional<Outcome<Answer>> released(ShopSystem system, Asked asked) {
        return keys.load(SystemStreams.release(system.id(), asked.key())).map(Versioned::state)
                .map(known -> known.isOf(asked.contentSha256())
                        ? new Outcome.Done<>(new Answer(known, true), List.of())
                        : new Outcome.Refused<>(List.of(
                                new SystemRefusal.KeyUsedOtherwise(system.id(), asked.key()))));
    }

    private List<Refusal> against(ShopSystem system) {
        if (!system.may(Scope.RELEASE)) {
            return List.of(new SystemRefusal.SystemMayNot(system.id(), Scope.RELEASE));
        }
        return system.answering().map(who -> people.find(who.badge())
                        .filter(person -> person.active() && person.holds(Role.LEAD)).<List<Refusal>>map(
                                lead -> List.of())
                        .orElseGet(() -> List.of(new SystemRefusal.AnswererIsNoLead(system.id(), who.badge()))))
                .orElseGet(() -> List.of(new SystemRefusal.NobodyAnswers(system.id())));
    }

    private boolean opens(Asked asked) {
        return asked.title().isPresent() && kits.find(asked.kit()).isEmpty();
    }

    private Prepared<SystemRelease> beside(
            Origin origin, ShopSystem system, Asked asked, List<Traveller> made) {
        List<TravellerId> labels = made.stream().map(Traveller::id).toList();
        Prepared<SystemRelease> key = keys.prepare(SystemStreams.release(system.id(), asked.key()),
                before -> SystemRelease.decide(before, new SystemRelease.Done(
                        origin, system.id(), asked.key(), asked.contentSha256(), asked.kit(), labels)));
        return key.with(list(origin, asked), (release, kit) -> release);
    }

    /** What the parts list gains, so that the board knows what was asked for: a line that it has is used up. */
    private Prepared<?> list(Origin origin, Asked asked) {
        Optional<Kit> kit = kits.find(asked.kit()).map(Versioned::state);
        List<KitLine> open = new ArrayList<>(kit.map(known -> Releases.unreleased(known,
                travellers.ofKit(known.id()).stream().map(Card::traveller).toList())).orElse(List.of()));
        List<Refusal> differing = new ArrayList<>();
        List<KitLine> added = new ArrayList<>();
        int next = kit.map(Kit::nextLineNumber).orElse(1);
        for (ReleaseLine line : asked.lines()) {
            Optional<KitLine> listed = open.stream().filter(known -> isOf(known, line)).findFirst();
            listed.ifPresent(open::remove);
            if (listed.isEmpty()) {
                added.add(new KitLine(next++, line.partNumber(), line.description(), line.drawingRevision(),
                        line.quantity(), line.procedure(), Optional.of(line.heat())));
            } else if (listed.get().quantity() != line.quantity()) {
                differing.add(new SystemRefusal.QuantityDiffers(
                        asked.kit(), line.partNumber(), line.quantity(), listed.get().quantity()));
            }
        }
        if (!differing.isEmpty()) {
            return new Prepared.Refused<>(differing);
        }
        List<KitCommand> commands = new ArrayList<>();
        if (kit.isEmpty() && asked.title().isPresent()) {
            commands.add(new KitCommand.OpenKit(asked.kit(), asked.title().get(), asked.sessionDue(), origin));
        }
        if (!added.isEmpty()) {
            commands.add(new KitCommand.AddLines(asked.kit(), added, origin));
        }
        return commands.isEmpty() ? new Prepared.Ready<>(List.of(), Optional.empty())
                : kits.prepare(asked.kit(), commands);
    }

    private static boolean isOf(KitLine known, ReleaseLine line) {
        return known.partNumber().equals(line.partNumber()) && known.drawingRevision().equals(line.drawingRevision())
                && known.procedure().equals(line.procedure());
    }

    private static ReleaseOrder order(KitId kit, ReleaseLine line) {
        return new ReleaseOrder(kit, new PartIdentity(line.partNumber(), line.description(), line.drawingRevision()),
                line.quantity(), line.heat(), line.procedure(), line.procedureRevision());
    }
}
