package brightseam.weld.shell;

import brightseam.device.Meter;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.shell.Readings;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.session.GasLimits;
import brightseam.session.shell.SessionFact;
import brightseam.session.shell.SessionGas;
import brightseam.weld.ArgonFact;
import brightseam.weld.ChamberFact;
import brightseam.weld.GasReading;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** The chamber of the open session of a kit, by the readings of this moment. */
@Component
class SessionChamber implements ChamberNow {

    private final SessionGas sessions;
    private final Readings readings;

    SessionChamber(SessionGas sessions, Readings readings) {
        this.sessions = sessions;
        this.readings = readings;
    }

    @Override
    public Optional<Inside> of(KitId kit, Moment now) {
        return sessions.ofKit(kit).map(fact -> new Inside(chamber(fact), fact.inside()));
    }

    private ChamberFact chamber(SessionFact fact) {
        Optional<GasReading> oxygen = fact.limits().flatMap(limits -> fact.oxygenMeter()
                .map(meter -> ArcReadings.reading(readings.now(meter), limits.oxygenPpmMax())));
        return new ChamberFact(fact.session(), fact.kit(), fact.chamber(), fact.unfit(), oxygen,
                fact.limits().flatMap(GasLimits::moisturePpmMax).flatMap(most -> moisture(fact, most)),
                fact.connected().map(argon -> new ArgonFact(argon.supply(), argon.lot())),
                fact.limits().map(GasLimits::longestGap).orElse(Duration.ZERO), simulated(fact));
    }

    /** A dew point is judged by the session, which knows how to turn it into ppm; a reading in ppm is written down. */
    private Optional<GasReading> moisture(SessionFact fact, BigDecimal most) {
        return readings.now(fact.chamber(), MeterPlace.CHAMBER, MeterQuantity.MOISTURE_PPM)
                .map(meter -> ArcReadings.reading(meter, most));
    }

    private boolean simulated(SessionFact fact) {
        List<SupplyId> meters = Stream.concat(
                fact.oxygenMeter().stream(), fact.moistureMeter().stream()).toList();
        return meters.stream().map(readings::now).map(MeterNow::meter).anyMatch(Meter::isSimulated);
    }
}
