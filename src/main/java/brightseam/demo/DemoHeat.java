package brightseam.demo;

import brightseam.kernel.HeatId;

/** The labels of the demo's heats. */
final class DemoHeat {

    static final HeatId LEG_TUBE = new HeatId("H-4471");
    static final HeatId MAST_TUBE = new HeatId("H-4502");
    static final HeatId FITTING_BAR = new HeatId("H-2208");
    static final HeatId COLLAR_BAR = new HeatId("H-2219");
    static final HeatId WIRE = new HeatId("H-0917");
    static final HeatId HELD_TUBE = new HeatId("H-4519");

    private DemoHeat() {}
}
