package brightseam.demo;

import brightseam.demo.physics.Cylinders;
import brightseam.demo.physics.Gas;
import brightseam.demo.physics.Space;
import brightseam.kernel.SupplyId;
import java.time.Duration;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Makes trouble at the demo's simulated chamber, for whoever wants to see what the shop makes of it. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
public final class ChamberTrouble {

    /** The oxygen analyser that decides. */
    public static final SupplyId OXYGEN = DemoMeter.CHAMBER_OXYGEN.label();

    private static final double SMALL_CYLINDER_LITRES = 50;
    private static final double ROOM_CELSIUS = DemoChamber.ROOM_CELSIUS.doubleValue();

    private final SimulatedMeters chamber;

    ChamberTrouble(SimulatedMeters chamber) {
        this.chamber = chamber;
    }

    /** From now on so much air leaks into the chamber, litres a minute, beside what always does; 0 ends it. */
    public void leak(double litresPerMinute) {
        chamber.change(rig -> rig.faults().leak(litresPerMinute));
    }

    /** From now on the argon carries so much water more than its certificate says, ppm; 0 ends it. */
    public void wetGas(double moisturePpm) {
        chamber.change(rig -> rig.faults().wetGas(moisturePpm));
    }

    /** The ventilation of the room stands still, or runs again. */
    public void ventilationOff(boolean off) {
        chamber.change(rig -> rig.faults().ventilationOff(off));
    }

    /** From now on {@code meter} says what it said last. */
    public void freeze(SupplyId meter) {
        chamber.change(rig -> rig.faults().freeze(meter.value()));
    }

    /** From now on {@code meter} says nothing. */
    public void silence(SupplyId meter) {
        chamber.change(rig -> rig.faults().silence(meter.value(), rig.atMillis(), Long.MAX_VALUE));
    }

    /** {@code meter} works again. */
    public void mend(SupplyId meter) {
        chamber.change(rig -> rig.faults().mend(meter.value()));
    }

    /** {@code after} the start of the next arc the chamber's oxygen analyser says nothing for {@code length}. */
    public void gapInNextArc(Duration after, Duration length) {
        chamber.change(rig -> rig.faults().silenceInNextArc(OXYGEN.value(), after, length));
    }

    /** So much room air comes into the chamber now, litres. */
    public void puff(double litres) {
        chamber.change(rig -> rig.faults().puff(litres, rig.atMillis()));
    }

    /** So much room air comes into the chamber {@code after} the start of the next arc, litres. */
    public void puffInNextArc(double litres, Duration after) {
        chamber.change(rig -> rig.faults().puffInNextArc(litres, after));
    }

    /** The argon that is connected holds no more than a single cylinder at {@code gaugeBar}. */
    public void nearlyEmpty(double gaugeBar) {
        chamber.drain(new Cylinders(SMALL_CYLINDER_LITRES, gaugeBar, ROOM_CELSIUS));
    }

    /** Everything works again; what has come in or gone is not undone. */
    public void mendAll() {
        chamber.change(rig -> rig.faults().mendAll());
    }

    /** What the chamber's oxygen is in truth now, ppm: nobody in a real shop can ask this. */
    public double trueOxygenPpm() {
        return chamber.ask(rig -> rig.physics().ppm(Gas.OXYGEN, Space.CHAMBER));
    }
}
