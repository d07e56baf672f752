package brightseam.demo.physics;

import java.time.Duration;

/**
 * One or several cylinders at room temperature, as one volume. The pressure is that of a real gas, by the equation of
 * Peng and Robinson (1976) with argon's critical point 150.69 K, 48.63 bar and acentric factor -0.002 (from memory).
 * They are taken to stay at room temperature while they empty, as they do at a shop's flows.
 */
public final class Cylinders implements ArgonSource {

    private static final double GAS_CONSTANT = 8.314462618;
    private static final double CRITICAL_KELVIN = 150.69;
    private static final double CRITICAL_PASCAL = 4.863e6;
    private static final double ACENTRIC = -0.002;
    private static final double ATMOSPHERE_PASCAL = 101_325;
    private static final double PASCAL_PER_BAR = 1e5;
    private static final double ZERO_CELSIUS = 273.15;
    private static final double STANDARD_KELVIN = 288.15;
    /** Litres of one mole at 15 °C and one atmosphere, as an ideal gas. */
    private static final double STANDARD_LITRES_PER_MOLE =
            1_000 * GAS_CONSTANT * STANDARD_KELVIN / ATMOSPHERE_PASCAL;
    private static final double LITRES_PER_CUBIC_METRE = 1_000;
    private static final int BISECTIONS = 80;

    private final double cubicMetres;
    private final double kelvin;
    private final double molesLeftIn;
    private double moles;

    /** Of {@code waterLitres} together, filled to {@code gaugeBar} at {@code celsius}. */
    public Cylinders(double waterLitres, double gaugeBar, double celsius) {
        this.cubicMetres = waterLitres / LITRES_PER_CUBIC_METRE;
        this.kelvin = celsius + ZERO_CELSIUS;
        this.molesLeftIn = moles(ATMOSPHERE_PASCAL);
        this.moles = moles(gaugeBar * PASCAL_PER_BAR + ATMOSPHERE_PASCAL);
    }

    @Override
    public double draw(double standardLitres) {
        double drawn = Math.min(standardLitres / STANDARD_LITRES_PER_MOLE, moles - molesLeftIn);
        moles -= drawn;
        return drawn * STANDARD_LITRES_PER_MOLE;
    }

    @Override
    public void stand(Duration duration) {
        // Closed steel keeps what it holds.
    }

    @Override
    public double standardLitres() {
        return (moles - molesLeftIn) * STANDARD_LITRES_PER_MOLE;
    }

    @Override
    public double gaugeBar() {
        return (pascal(moles) - ATMOSPHERE_PASCAL) / PASCAL_PER_BAR;
    }

    /** The compressibility of what is left: 1 for an ideal gas. */
    public double compressibility() {
        return pascal(moles) * cubicMetres / (moles * GAS_CONSTANT * kelvin);
    }

    private double pascal(double amount) {
        double repulsion = 0.07780 * GAS_CONSTANT * CRITICAL_KELVIN / CRITICAL_PASCAL;
        double slope = 0.37464 + 1.54226 * ACENTRIC - 0.26992 * ACENTRIC * ACENTRIC;
        double alpha = Math.pow(1 + slope * (1 - Math.sqrt(kelvin / CRITICAL_KELVIN)), 2);
        double attraction = 0.45724 * Math.pow(GAS_CONSTANT * CRITICAL_KELVIN, 2) / CRITICAL_PASCAL * alpha;
        double molar = cubicMetres / amount;
        return GAS_CONSTANT * kelvin / (molar - repulsion)
                - attraction / (molar * molar + 2 * repulsion * molar - repulsion * repulsion);
    }

    /** Above the critical temperature the pressure rises with the amount, so halving finds it. */
    private double moles(double pascal) {
        double few = 0;
        double many = 3 * pascal * cubicMetres / (GAS_CONSTANT * kelvin);
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (few + many) / 2;
            if (pascal(middle) < pascal) {
                few = middle;
            } else {
                many = middle;
            }
        }
        return (few + many) / 2;
    }
}
