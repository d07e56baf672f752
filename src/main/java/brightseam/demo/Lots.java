package brightseam.demo;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.kit.KitCommand;
import brightseam.kit.KitLine;
import brightseam.kit.shell.Kits;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.shell.ReleaseOrder;
import brightseam.traveller.shell.Releases;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Opens kits of the demo shop and releases their lots. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
public final class Lots {

    /** The last revision by which lots are passed in, reviewed and closed at the bench. */
    private static final String WHOLLY_AT_THE_BENCH = "B";

    private final Kits kits;
    private final Releases releases;
    private final Crew crew;
    private final DemoClock clock;

    Lots(Kits kits, Releases releases, Crew crew, DemoClock clock) {
        this.kits = kits;
        this.releases = releases;
        this.crew = crew;
        this.clock = clock;
    }

    /** One lot of a kit: what it is, how many, of which heat, by which procedure. */
    public record Lot(String partNumber, String description, int quantity, HeatId heat, String procedure) {

        KitLine line(int number) {
            return new KitLine(number, partNumber, description, "A", quantity, procedure, Optional.of(heat));
        }

        ReleaseOrder order(KitId kit, Optional<String> revision) {
            return new ReleaseOrder(kit, new PartIdentity(partNumber, description, "A"), quantity, heat, procedure,
                    revision);
        }
    }

    /** Opens {@code kit} with {@code lots} as its lines, for a chamber session that is due after {@code due}. */
    public void open(KitId kit, String title, Duration due, List<Lot> lots) {
        Crew.done(kits.execute(new KitCommand.OpenKit(kit, title, Optional.of(clock.now().wall().plus(due)),
                crew.origin(DemoPerson.BRAM_ODUYA))));
        List<KitLine> lines = new ArrayList<>();
        lots.forEach(lot -> lines.add(lot.line(lines.size() + 1)));
        Crew.done(kits.execute(new KitCommand.AddLines(kit, lines, crew.origin(DemoPerson.BRAM_ODUYA))));
    }

    /** Releases {@code lots} of {@code kit} by the last approved revisions; their labels in the same order. */
    public List<TravellerId> release(KitId kit, List<Lot> lots) {
        return release(kit, lots, Optional.empty());
    }

    /** Releases them by {@link #WHOLLY_AT_THE_BENCH}: a whole life without a chamber session. */
    public List<TravellerId> releaseForTheBench(KitId kit, List<Lot> lots) {
        return release(kit, lots, Optional.of(WHOLLY_AT_THE_BENCH));
    }

    private List<TravellerId> release(KitId kit, List<Lot> lots, Optional<String> revision) {
        return Crew.done(releases.release(crew.actor(DemoPerson.BRAM_ODUYA),
                        lots.stream().map(lot -> lot.order(kit, revision)).toList()))
                .stream().map(released -> released.id()).toList();
    }

    /** The kit is done. */
    void close(KitId kit) {
        Crew.done(kits.execute(new KitCommand.CloseKit(kit, crew.origin(DemoPerson.BRAM_ODUYA))));
    }
}
