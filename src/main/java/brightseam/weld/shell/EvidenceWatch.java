package brightseam.weld.shell;

import brightseam.device.Meter;
import brightseam.device.MeterRecord;
import brightseam.device.SeriesEvidence;
import brightseam.device.shell.Meters;
import brightseam.device.shell.Readings;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.Lead;
import brightseam.weld.Arc;
import brightseam.weld.ArcSetting;
import brightseam.weld.Joint;
import java.time.Duration;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * Looks into the readings over each joint once they are in: to the end of the arc, and to the end of its cooling, each
 * with the time that the meter takes to answer. What a meter shows now is what the gas was that long ago.
 */
@Component
class EvidenceWatch {

    /** How much later than its time a reading may come in over the shop's network and still count; common practice. */
    static final Duration ON_THE_WAY = Duration.ofSeconds(2);

    private static final Logger LOG = LoggerFactory.getLogger(EvidenceWatch.class);

    private final Joints joints;
    private final Meters meters;
    private final Readings readings;
    private final ShopClock clock;
    private final Lead lead;

    EvidenceWatch(Joints joints, Meters meters, Readings readings, ShopClock clock) {
        this(joints, meters, readings, clock, () -> true);
    }

    @Autowired
    EvidenceWatch(Joints joints, Meters meters, Readings readings, ShopClock clock, Lead lead) {
        this.joints = joints;
        this.meters = meters;
        this.readings = readings;
        this.clock = clock;
        this.lead = lead;
    }

    @Scheduled(fixedDelay = 1000)
    void look() {
        if (!lead.isLead()) {
            return;
        }
        for (JointId id : joints.notSettled()) {
            try {
                joints.find(id).map(Versioned::state).ifPresent(this::look);
            } catch (NotStoredException lost) {
                LOG.warn("what is proven of {} could not be written down yet: {}", id, lost.getMessage());
            }
        }
    }

    private void look(Joint joint) {
        Moment now = clock.now();
        for (Joint.Owed owed : joint.owed(now)) {
            ArcSetting setting = setting(joint, owed);
            Optional<Meter> meter = meters.find(setting.oxygen().meter()).map(Versioned::state)
                    .map(MeterRecord::meter);
            Duration answer = meter.map(Meter::responseTime).orElse(Duration.ZERO);
            Duration wait = answer.plus(meter.map(Meter::every).orElse(Duration.ZERO)).plus(ON_THE_WAY);
            if (now.isBefore(owed.to().plus(wait))) {
                return;
            }
            SeriesEvidence proven = readings.evidence(setting.oxygen().meter(), owed.from().elapsedMillis(),
                    owed.to().plus(answer).elapsedMillis(), setting.oxygen().ppmMax().doubleValue(),
                    setting.longestGap().toMillis());
            joints.takeEvidence(joint.id(), owed, proven);
        }
    }

    private static ArcSetting setting(Joint joint, Joint.Owed owed) {
        Arc arc = joint.arcs().get(owed.run() - 1);
        return arc.setting();
    }
}
