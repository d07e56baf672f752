package brightseam.traveller.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.material.shell.Heats;
import brightseam.procedure.Procedure;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerCommand.HeatFact;
import brightseam.traveller.TravellerDecider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Releases lots: gives each a label and pins the approved revision of its procedure. */
@Service
public class Releases {

    private final Transactions transactions;
    private final Travellers travellers;
    private final ProcedureLibrary procedures;
    private final Heats heats;
    private final Kits kits;

    Releases(Transactions transactions, Travellers travellers, ProcedureLibrary procedures, Heats heats, Kits kits) {
        this.transactions = transactions;
        this.travellers = travellers;
        this.procedures = procedures;
        this.heats = heats;
        this.kits = kits;
    }

    /**
     * Releases every one of {@code orders}, or none.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was released then
     */
    public Outcome<List<Traveller>> release(Actor actor, List<ReleaseOrder> orders) {
        return transactions.commit(origin -> {
            long last = travellers.rows().lastReleaseNumber();
            List<Prepared<Traveller>> parts = new ArrayList<>();
            for (ReleaseOrder order : orders) {
                last = free(last + 1);
                parts.add(prepare(origin, new TravellerId("T-" + last), order));
            }
            return Prepared.all(parts);
        }, actor);
    }

    /** Another lead may have released since the last number was read; that is no reason to refuse this one. */
    private long free(long number) {
        long free = number;
        while (travellers.find(new TravellerId("T-" + free)).isPresent()) {
            free++;
        }
        return free;
    }

    private Prepared<Traveller> prepare(Origin origin, TravellerId id, ReleaseOrder order) {
        Optional<HeatFact> heat = heats.find(order.heat()).map(found -> found.state())
                .map(found -> new HeatFact(found.id(), found.grade(), found.isOnHold()));
        Optional<Procedure> procedure = order.revision().isEmpty() ? procedures.current(order.procedure())
                : procedures.revision(order.procedure(), order.revision().get());
        List<Refusal> refusals = new ArrayList<>();
        if (kits.find(order.kit()).filter(kit -> !kit.state().closed()).isEmpty()) {
            refusals.add(new ShopRefusal.KitNotOpen(order.kit()));
        }
        if (heat.isEmpty()) {
            refusals.add(new ShopRefusal.HeatUnknown(order.heat()));
        }
        if (procedure.isEmpty()) {
            refusals.add(new ShopRefusal.NoApprovedRevision(order.procedure()));
        }
        if (!refusals.isEmpty()) {
            return new Prepared.Refused<>(refusals);
        }
        return travellers.streams().prepare(id, state -> TravellerDecider.decide(state, procedure.get(),
                new TravellerCommand.Release(
                        origin, id, order.kit(), order.part(), order.quantity(), heat.get())));
    }
}
