package brightseam.demo;

import brightseam.chamber.ArgonCommand;
import brightseam.chamber.ArgonReading;
import brightseam.chamber.ChamberCommand;
import brightseam.chamber.shell.ArgonStore;
import brightseam.chamber.shell.Chambers;
import brightseam.chamber.shell.ChangeOverOrder;
import brightseam.device.MeterCommand;
import brightseam.device.shell.Meters;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.people.Signer;
import brightseam.procedure.Vocabulary;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Sets up the demo's chamber: its register, its meters, its argon, and what lies ready to go in or must not. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class ChamberGear {

    private static final String GAS_WORKS = "Hollin Cove Gases (invented)";

    private final Chambers chambers;
    private final ArgonStore argon;
    private final Meters meters;
    private final Vocabulary vocabulary;
    private final DemoSupplies cupboard;
    private final SimulatedMeters simulation;
    private final Crew crew;

    ChamberGear(Chambers chambers, ArgonStore argon, Meters meters, Vocabulary vocabulary, DemoSupplies cupboard,
            SimulatedMeters simulation, Crew crew) {
        this.chambers = chambers;
        this.argon = argon;
        this.meters = meters;
        this.vocabulary = vocabulary;
        this.cupboard = cupboard;
        this.simulation = simulation;
        this.crew = crew;
    }

    /** Sets it up. */
    void fill() {
        Crew.done(chambers.execute(new ChamberCommand.RegisterChamber(
                DemoChamber.STATION, DemoChamber.terms(), origin(), signer())));
        for (DemoMeter meter : DemoMeter.values()) {
            install(meter);
        }
        Crew.done(meters.execute(new MeterCommand.TakeOutOfUse(DemoMeter.SPARE_OXYGEN.label(),
                "On the shelf; to be calibrated before it is used", origin(), signer())));
        for (DemoArgon source : DemoArgon.values()) {
            deliver(source);
        }
        Crew.done(argon.changeOver(new ChangeOverOrder(DemoChamber.STATION, Optional.empty(),
                Optional.of(DemoArgon.BUNDLE.label()), Optional.empty(), Optional.empty(), false), origin(), signer()));
        simulation.switchOn();
    }

    private void install(DemoMeter meter) {
        cupboard.gauge(meter);
        Crew.done(meters.execute(
                new MeterCommand.RegisterMeter(meter.label(), meter.terms(), origin(), signer())));
    }

    private void deliver(DemoArgon source) {
        Origin origin = origin();
        SupplyId label = source.label();
        Vocabulary.SupplyType type = vocabulary.supplies().get(source.vessel().form().supplyType());
        Crew.done(argon.deliver(
                new SupplyCommand.RegisterSupply(label, type, source.title(), source.lot(), GAS_WORKS,
                        Optional.of(Supplies.day(origin.at()).plusDays(source.daysLeft())), type.mayTouch(), origin),
                new ArgonCommand.Deliver(label, source.vessel(), source.purity(),
                        Optional.of(reading(source, origin.at())), origin)));
    }

    private static ArgonReading reading(DemoArgon source, Moment at) {
        return source.vessel().form().isLiquid() ? ArgonReading.level(at, source.read())
                : ArgonReading.pressure(at, source.read(), DemoChamber.ROOM_CELSIUS);
    }

    private Origin origin() {
        return crew.origin(DemoPerson.BRAM_ODUYA);
    }

    private Signer signer() {
        return crew.signer(DemoPerson.BRAM_ODUYA);
    }
}
