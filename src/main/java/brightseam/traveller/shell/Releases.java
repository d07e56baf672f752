package brightseam.traveller.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
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
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
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
     * Releases every one of {@code orders}, or none. Where another lead was first with a label, the next one is taken.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was released then
     */
    public Outcome<List<Traveller>> release(Actor actor, List<ReleaseOrder> orders) {
        return release(actor, orders, false, (origin, released) -> new Prepared.Ready<>(List.of(), released));
    }

    /**
     * Releases every one of {@code orders} together with what {@code beside} answers, or nothing.
     *
     * @param opensKit whether {@code beside} opens the kit in the same append
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was released then
     */
    public <R> Outcome<R> release(Actor actor, List<ReleaseOrder> orders, boolean opensKit,
            BiFunction<Origin, List<Traveller>, Prepared<R>> beside) {
        return transactions.commit(origin -> {
            long last = travellers.rows().lastReleaseNumber();
            List<Prepared<Traveller>> parts = new ArrayList<>();
            for (ReleaseOrder order : orders) {
                TravellerId id = new TravellerId("T-" + ++last);
                Prepared<Traveller> part = prepare(origin, id, order, opensKit);
                while (part instanceof Prepared.Refused && travellers.find(id).isPresent()) {
                    id = new TravellerId("T-" + ++last);
                    part = prepare(origin, id, order, opensKit);
                }
                parts.add(part);
            }
            Prepared<List<Traveller>> own = Prepared.all(parts);
            return own instanceof Prepared.Ready<List<Traveller>> ready
                    ? own.with(beside.apply(origin, ready.result()), (released, other) -> other)
                    : new Prepared.Refused<>(own.broken());
        }, actor);
    }

    /**
     * The lines of {@code kit} that none of its {@code travellers} was released for. A traveller answers the first line
     * of its part number, drawing revision and procedure that no other answers; those set apart later answer none.
     */
    public static List<KitLine> unreleased(Kit kit, Collection<Traveller> travellers) {
        List<Traveller> free = new ArrayList<>(travellers.stream()
                .filter(traveller -> traveller.parent().isEmpty())
                .sorted(Comparator.comparing(Traveller::id)).toList());
        List<KitLine> open = new ArrayList<>();
        for (KitLine line : kit.lines()) {
            Optional<Traveller> answer = free.stream().filter(traveller -> answers(traveller, line)).findFirst();
            answer.ifPresentOrElse(free::remove, () -> open.add(line));
        }
        return open;
    }

    private static boolean answers(Traveller traveller, KitLine line) {
        return traveller.part().partNumber().equals(line.partNumber())
                && traveller.part().drawingRevision().equals(line.drawingRevision())
                && traveller.procedure().id().equals(line.procedure());
    }

    private Prepared<Traveller> prepare(Origin origin, TravellerId id, ReleaseOrder order, boolean opensKit) {
        Optional<HeatFact> heat = heats.find(order.heat()).map(found -> found.state())
                .map(found -> new HeatFact(found.id(), found.grade(), found.isOnHold()));
        Optional<Procedure> procedure = order.revision().isEmpty() ? procedures.current(order.procedure())
                : procedures.revision(order.procedure(), order.revision().get());
        List<Refusal> refusals = new ArrayList<>();
        if (!opensKit && kits.find(order.kit()).filter(kit -> !kit.state().closed()).isEmpty()) {
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
