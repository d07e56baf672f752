package brightseam.traveller.shell;

import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Prepared;
import brightseam.material.shell.Heats;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.traveller.LoadMember;
import brightseam.traveller.LoadRules;
import brightseam.traveller.Placement;
import brightseam.traveller.Traveller;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Gathers what lies in process baskets, for the rules that only exist for a load. */
@Component
class Basketfuls {

    private final Travellers travellers;
    private final Bins bins;
    private final Heats heats;

    Basketfuls(Travellers travellers, Bins bins, Heats heats) {
        this.travellers = travellers;
        this.bins = bins;
        this.heats = heats;
    }

    /** What stands against {@code ids} doing {@code step} together, and without what else is in their baskets. */
    Prepared<?> mayGo(Collection<TravellerId> ids, StepId step) {
        List<LoadMember> load = members(ids);
        List<TravellerId> left = load.stream().flatMap(member -> basket(member).stream()).distinct()
                .flatMap(basket -> bins.inside(basket).stream()).filter(id -> !ids.contains(id)).distinct().toList();
        return load.isEmpty() ? Transactions.nothing()
                : unless(LoadRules.together(step, load, members(left)));
    }

    /** What stands against {@code ids} being put into {@code bin} with what is in there; nothing outside baskets. */
    Prepared<?> mayJoin(Collection<TravellerId> ids, BinId bin) {
        List<TravellerId> inside = inside(bin, ids);
        return inside.isEmpty() ? Transactions.nothing()
                : unless(LoadRules.joining(bin, members(ids), members(inside)));
    }

    /** What stands against {@code taken}, which has been taken out, going into {@code bin}. */
    Prepared<?> mayTake(Traveller taken, Procedure procedure, BinId bin) {
        List<TravellerId> inside = inside(bin, List.of(taken.id()));
        return inside.isEmpty() ? Transactions.nothing()
                : unless(LoadRules.joining(bin, List.of(member(taken, procedure)), members(inside)));
    }

    private List<TravellerId> inside(BinId bin, Collection<TravellerId> but) {
        boolean basket = bins.find(bin).filter(found -> found.state().binClass() == BinClass.PROCESS_BASKET)
                .isPresent();
        return basket ? bins.inside(bin).stream().filter(id -> !but.contains(id)).toList() : List.of();
    }

    private List<LoadMember> members(Collection<TravellerId> ids) {
        return ids.stream().map(travellers::find).flatMap(Optional::stream)
                .map(card -> member(card.traveller(), card.procedure())).toList();
    }

    private LoadMember member(Traveller traveller, Procedure procedure) {
        return new LoadMember(traveller, procedure,
                heats.find(traveller.heat()).map(heat -> heat.state().grade()).orElse(""));
    }

    private static Optional<BinId> basket(LoadMember member) {
        return member.traveller().placement().filter(where -> where.binClass() == BinClass.PROCESS_BASKET)
                .map(Placement::bin);
    }

    private static Prepared<?> unless(List<Refusal> refusals) {
        return refusals.isEmpty() ? Transactions.nothing() : new Prepared.Refused<>(refusals);
    }
}
