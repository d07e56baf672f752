package brightseam.weld;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import java.util.List;

/** What the joints of a kit have against what is to be done with its pieces or its chamber. */
public sealed interface JointsRefusal extends Refusal {

    @Override
    default String code() {
        return switch (this) {
            case NoJointPlanned ignored -> "joints-none-planned";
            case JointsNotWelded ignored -> "joints-not-welded";
            case JointsNotProven ignored -> "joints-not-proven";
            case JointsNotAccepted ignored -> "joints-not-accepted";
            case ArcsRunning ignored -> "joints-arcs-running";
            case JointsHot ignored -> "joints-hot";
        };
    }

    /** No issue of the kit's weld map has a joint with pieces of the traveller. */
    record NoJointPlanned(TravellerId traveller, KitId kit) implements JointsRefusal {}

    /** These joints of it are not welded. */
    record JointsNotWelded(TravellerId traveller, List<String> joints) implements JointsRefusal {
        /** Copies the list. */
        public JointsNotWelded {
            joints = List.copyOf(joints);
        }
    }

    /** The readings over these joints are not all in yet. */
    record JointsNotProven(TravellerId traveller, List<String> joints) implements JointsRefusal {
        /** Copies the list. */
        public JointsNotProven {
            joints = List.copyOf(joints);
        }
    }

    /** These joints were not accepted by an inspector. */
    record JointsNotAccepted(TravellerId traveller, List<String> joints) implements JointsRefusal {
        /** Copies the list. */
        public JointsNotAccepted {
            joints = List.copyOf(joints);
        }
    }

    /** Nobody has stopped the arcs on these joints. */
    record ArcsRunning(List<String> joints) implements JointsRefusal {
        /** Copies the list. */
        public ArcsRunning {
            joints = List.copyOf(joints);
        }
    }

    /** These joints have to stay in the argon until {@code coolAt}. */
    record JointsHot(List<String> joints, Moment coolAt) implements JointsRefusal {
        /** Copies the list. */
        public JointsHot {
            joints = List.copyOf(joints);
        }
    }
}
