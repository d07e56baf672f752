package brightseam.demo;

import brightseam.bins.Bin;
import brightseam.bins.BinCommand;
import brightseam.bins.Fitness;
import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.procedure.BinClass;
import java.util.List;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Where the demo's people find an empty bin; where there is none left they bring a new one into use. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class Shelf {

    private static final int BASKET_HOLDS_MAX = 4;

    private final Bins bins;
    private final Crew crew;

    Shelf(Bins bins, Crew crew) {
        this.bins = bins;
        this.crew = crew;
    }

    /** An empty, open bin of one of {@code classes} that something may be put into, for {@code count} travellers. */
    BinId free(List<BinClass> classes, int count) {
        List<Bin> all = bins.all();
        return classes.stream()
                .flatMap(wanted -> all.stream().filter(bin -> bin.binClass() == wanted))
                .filter(bin -> isFree(bin, count))
                .map(Bin::id).findFirst()
                .orElseGet(() -> added(classes.getFirst(), all.size()));
    }

    /** Brings {@code id} into use; a clean bin is declared cleaned too. */
    void add(BinId id, BinClass binClass) {
        Optional<Integer> capacity =
                Optional.of(BASKET_HOLDS_MAX).filter(most -> binClass == BinClass.PROCESS_BASKET);
        Crew.done(bins.execute(
                new BinCommand.RegisterBin(id, binClass, capacity, crew.origin(DemoPerson.ODA_MARSH))));
        if (binClass == BinClass.CLEAN_BIN) {
            Crew.done(bins.execute(new BinCommand.DeclareCleaned(id, crew.origin(DemoPerson.ODA_MARSH))));
        }
    }

    private static boolean isFree(Bin bin, int count) {
        return bin.inside().isEmpty() && !bin.closed() && !bin.retired() && bin.fitness() == Fitness.FIT
                && bin.capacity().travellers().filter(most -> most < count).isEmpty()
                && !bin.capacity().asksForSizes();
    }

    private BinId added(BinClass binClass, int known) {
        BinId id = new BinId("B-" + (1001 + known));
        add(id, binClass);
        return id;
    }
}
