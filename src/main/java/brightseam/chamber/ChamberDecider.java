package brightseam.chamber;

import static brightseam.people.Role.FABRICATOR;
import static brightseam.people.Role.LEAD;
import static brightseam.people.Role.PROCESS_CONTROL;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Decides what a {@link ChamberCommand} does to a chamber. Process control or a lead set its terms; whoever works at it
 * changes the argon over.
 */
public final class ChamberDecider {

    private ChamberDecider() {}

    /** The events that follow from {@code command}, or every {@link ChamberRefusal} against it. */
    public static Decision<ChamberEvent> decide(
            Optional<Chamber> chamber, ChamberCommand command, Materials materials) {
        return chamber.map(known -> onKnown(known, command, materials))
                .orElseGet(() -> onUnknown(command, materials));
    }

    private static Decision<ChamberEvent> onUnknown(ChamberCommand command, Materials materials) {
        return command instanceof ChamberCommand.RegisterChamber first
                ? terms(first.station(), first.terms(), first.signer(), materials).accept(
                        new ChamberEvent.Registered(first.origin(), first.station(), first.terms(), first.signer()))
                : Decision.refused(List.of(new ChamberRefusal.ChamberUnknown(command.station())));
    }

    private static Decision<ChamberEvent> onKnown(Chamber chamber, ChamberCommand command, Materials materials) {
        StationId station = chamber.station();
        return switch (command) {
            case ChamberCommand.RegisterChamber ignored ->
                Decision.refused(List.of(new ChamberRefusal.ChamberAlreadyRegistered(station)));
            case ChamberCommand.ChangeTerms c -> terms(station, c.terms(), c.signer(), materials).accept(
                    new ChamberEvent.TermsChanged(c.origin(), station, c.terms(), c.reason(), c.signer()));
            case ChamberCommand.RecordLeak c -> signedBy(c.signer(), PROCESS_CONTROL, LEAD, FABRICATOR).accept(
                    new ChamberEvent.LeakTested(
                            c.origin(), station, c.airLitresPerMinute(), c.mixingEfficiency(), c.how(), c.signer()));
            case ChamberCommand.ChangeOver c -> changeOver(chamber, c);
            case ChamberCommand.NoteArgonUsed c -> Rules.check()
                    .refuseIf(chamber.counted().contains(c.report().session()),
                            () -> new ChamberRefusal.ArgonUseNotedAlready(c.report().session()))
                    .accept(new ChamberEvent.ArgonUsed(c.origin(), station, c.report()));
        };
    }

    private static Rules terms(StationId station, ChamberTerms terms, Signer signer, Materials materials) {
        return signedBy(signer, PROCESS_CONTROL, LEAD)
                .refuseIf(terms.lock().station().equals(station), () -> new ChamberRefusal.LockIsChamber(station))
                .refuseAll(MaterialRules.listed(terms.permittedMaterials(), materials));
    }

    private static Decision<ChamberEvent> changeOver(Chamber chamber, ChamberCommand.ChangeOver c) {
        List<SupplyId> connected = chamber.connected();
        Optional<SupplyId> absent = c.off().filter(supply -> !connected.contains(supply));
        Optional<SupplyId> present = c.on().filter(connected::contains);
        int others = connected.size() - (c.off().isPresent() && absent.isEmpty() ? 1 : 0);
        int places = chamber.terms().manifold().sourcesAtOnce();
        return signedBy(c.signer(), FABRICATOR, LEAD, PROCESS_CONTROL)
                .refuseIf(c.off().isEmpty() && c.on().isEmpty(),
                        () -> new ChamberRefusal.NothingToChange(chamber.station()))
                .refuseFor(absent.map(supply -> new ChamberRefusal.SourceNotConnected(supply, chamber.station())))
                .refuseFor(present.map(supply -> new ChamberRefusal.SourceAlreadyConnected(supply, chamber.station())))
                .refuseIf(c.on().isPresent() && others >= places,
                        () -> new ChamberRefusal.ManifoldFull(chamber.station(), connected, places))
                .accept(new ChamberEvent.ChangedOver(c.origin(), chamber.station(), c.off(), c.on(), c.signer()));
    }

    private static Rules signedBy(Signer signer, Role... roles) {
        return Rules.check().refuseIf(Arrays.stream(roles).noneMatch(signer::has),
                () -> new ChamberRefusal.ChamberRoleMissing(signer.badge(), List.of(roles)));
    }
}
