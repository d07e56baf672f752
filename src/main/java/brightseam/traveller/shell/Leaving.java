package brightseam.traveller.shell;

import brightseam.bins.Bin;
import brightseam.bins.BinCommand;
import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.kernel.Origin;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Prepared;
import brightseam.traveller.Traveller;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Takes the pieces of travellers that have ended out of their bins, so that a bin holds what is still to be done. */
@Component
class Leaving {

    private final Bins bins;

    Leaving(Bins bins) {
        this.bins = bins;
    }

    /** What the bins of those {@code travellers} that have ended would store. */
    Prepared<List<Bin>> bins(Origin origin, List<Traveller> travellers) {
        Set<TravellerId> ended = travellers.stream().filter(Traveller::hasEnded).map(Traveller::id)
                .collect(Collectors.toSet());
        List<BinCommand> commands = new ArrayList<>();
        travellers.stream().filter(Traveller::hasEnded)
                .flatMap(traveller -> traveller.placement().stream()).map(where -> where.bin()).distinct()
                .forEach(bin -> commands.addAll(emptying(origin, bin, ended)));
        return bins.prepare(commands);
    }

    /** A closed bin that others are still in stays closed, with what has ended inside. */
    private List<BinCommand> emptying(Origin origin, BinId id, Set<TravellerId> ended) {
        Bin bin = bins.find(id).orElseThrow().state();
        List<BinCommand> commands = new ArrayList<>();
        if (bin.closed() && !ended.containsAll(bin.inside())) {
            return commands;
        }
        if (bin.closed()) {
            commands.add(new BinCommand.OpenBin(id, true, origin));
        }
        bin.inside().stream().filter(ended::contains)
                .forEach(traveller -> commands.add(new BinCommand.TakeOut(id, traveller, origin)));
        return commands;
    }
}
