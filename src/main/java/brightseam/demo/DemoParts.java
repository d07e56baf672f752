package brightseam.demo;

import brightseam.bath.Bore;
import brightseam.bath.Shape;
import brightseam.bins.BinCommand;
import brightseam.bins.Capacity;
import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.kernel.PartNumber;
import brightseam.part.PartCommand;
import brightseam.part.shell.Parts;
import brightseam.procedure.BinClass;
import java.math.BigDecimal;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** The shapes of the demo's parts, and a small basket that takes only so much of them. All invented. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class DemoParts {

    /** A basket with limits of pieces, area and mass. */
    static final BinId SMALL_BASKET = new BinId("B-0251");

    private static final Shape ROD = new Shape.Bar(1.6, 914);

    private final Parts parts;
    private final Bins bins;
    private final Shelf shelf;
    private final Crew crew;

    DemoParts(Parts parts, Bins bins, Shelf shelf, Crew crew) {
        this.parts = parts;
        this.bins = bins;
        this.shelf = shelf;
        this.crew = crew;
    }

    /** Gives every part of the demo's kits its shape, and the small basket its limits. */
    void fill() {
        shape("HDF-2010-01", leg(700));
        shape("HDF-2010-90", ROD);
        shape("HDF-3100-01", leg(900));
        shape("HDF-3100-02", leg(760));
        shape("HDF-3100-10", new Shape.Fitting(210, 64, 128));
        shape("HDF-3100-90", ROD);
        shape("HDF-3200-01", mast(1400));
        shape("HDF-3200-02", mast(420));
        shape("HDF-3200-03", mast(640));
        shape("HDF-3200-10", new Shape.Fitting(148, 22, 71));
        shape("HDF-3200-11", new Shape.Fitting(96, 31, 27));
        shape("HDF-3200-90", ROD);
        shape("HDF-3300-01", leg(780));
        shape("HDF-3300-02", leg(310));
        shape("HDF-3300-03", leg(160));
        shape("HDF-3300-04", mast(60));
        shape("HDF-3300-05", mast(1100));
        shape("HDF-3300-06", mast(450));
        shape("HDF-3300-07", leg(520));
        shape("HDF-4700-01", leg(820));
        shape("HDF-4700-02", leg(360));
        shape("HDF-4700-10", new Shape.Fitting(120, 38, 95));
        shape("HDF-4700-90", ROD);
        shelf.add(SMALL_BASKET, BinClass.PROCESS_BASKET);
        Crew.done(bins.execute(new BinCommand.SetCapacity(SMALL_BASKET, new Capacity(Optional.of(4), Optional.of(24),
                Optional.of(new BigDecimal("0.60")), Optional.of(new BigDecimal("6"))),
                crew.origin(DemoPerson.ODA_MARSH))));
    }

    private void shape(String number, Shape shape) {
        Crew.done(parts.execute(new PartCommand.GiveShape(
                new PartNumber(number), shape, Optional.empty(), crew.origin(DemoPerson.BRAM_ODUYA))));
    }

    private static Shape leg(double lengthMillimetres) {
        return new Shape.Tube(38.1, 1.65, lengthMillimetres, Bore.VENTED);
    }

    private static Shape mast(double lengthMillimetres) {
        return new Shape.Tube(25.4, 1.25, lengthMillimetres, Bore.VENTED);
    }
}
