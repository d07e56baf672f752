package brightseam.traveller.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.ledger.Versioned;
import brightseam.line.Station;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;

/**
 * Before a basket goes into a soak: whether every tank that it must not wait for afterwards is there and fit. Nobody
 * should find a locked rinse with acid dripping off the basket.
 */
@Component
class RoomAhead {

    private static final Set<StepKind> AT_A_BATH = EnumSet.of(StepKind.SOAK, StepKind.RINSE, StepKind.DRY);

    private final Baths baths;
    private final Stations stations;

    RoomAhead(Baths baths, Stations stations) {
        this.baths = baths;
        this.stations = stations;
    }

    /** A refusal for each class of tank that follows {@code step} over gaps and of which none is fit now. */
    List<Refusal> missing(Procedure procedure, StepId step, Moment now) {
        if (procedure.step(step).kind() != StepKind.SOAK) {
            return List.of();
        }
        List<Station> all = stations.all();
        return following(procedure, step).stream().filter(next -> AT_A_BATH.contains(next.kind()))
                .map(Step::station).distinct()
                .<Refusal>mapMulti((stationClass, found) -> {
                    List<StationId> own = all.stream().filter(one -> one.stationClass().equals(stationClass))
                            .map(Station::id).toList();
                    if (own.stream().anyMatch(tank -> baths.find(tank).isPresent())
                            && all.stream().noneMatch(one -> isFit(one, stationClass, now))) {
                        found.accept(new ShopRefusal.NoFitTankAfter(stationClass, own));
                    }
                }).toList();
    }

    /** The steps that have to follow in time, one gap after the other; a gap of hours hurries nobody. */
    private static List<Step> following(Procedure procedure, StepId step) {
        List<Step> chain = new ArrayList<>();
        for (int at = procedure.position(step); at + 1 < procedure.steps().size(); at++) {
            Step from = procedure.steps().get(at);
            if (from.gap().isEmpty() || from.kind() == StepKind.DRY) {
                return chain;
            }
            chain.add(procedure.steps().get(at + 1));
        }
        return chain;
    }

    private boolean isFit(Station station, String stationClass, Moment now) {
        return station.stationClass().equals(stationClass) && !station.isOutOfUse()
                && baths.find(station.id()).map(Versioned::state)
                        .map(bath -> bath.objections(now).isEmpty()).orElse(true);
    }
}
