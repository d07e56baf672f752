package brightseam.demo.physics;

import java.time.Duration;

/** Argon that a chamber is fed from and that empties. Amounts are standard litres: at 15 °C and one atmosphere. */
public sealed interface ArgonSource permits Cylinders, Dewar {

    /** Takes {@code standardLitres}, or what is left of them. Answers how much came. */
    double draw(double standardLitres);

    /** Stands for {@code duration}. */
    void stand(Duration duration);

    /** How much can still be drawn. */
    double standardLitres();

    /** What a gauge before the regulator shows, in bar above the atmosphere. */
    double gaugeBar();
}
