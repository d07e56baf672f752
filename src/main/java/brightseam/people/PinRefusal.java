package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;

/** Why a PIN is not taken. The PIN itself is never part of the evidence. */
public sealed interface PinRefusal extends Refusal {

    /** A new PIN has another length or other characters than digits. */
    record PinForm(int digitsMin, int digitsMax) implements PinRefusal {
        @Override
        public String code() {
            return "pin-form";
        }
    }

    /** A new PIN is one of those that are tried first. */
    record PinTrivial(String pattern) implements PinRefusal {
        @Override
        public String code() {
            return "pin-trivial";
        }
    }

    /** Badge and PIN do not belong together, or nobody has the badge, or it has no PIN yet. */
    record PinWrong(BadgeId badge) implements PinRefusal {
        @Override
        public String code() {
            return "pin-wrong";
        }
    }

    /** Too many wrong PINs in a row; an administrator opens the badge again. */
    record PinClosed(BadgeId badge) implements PinRefusal {
        @Override
        public String code() {
            return "pin-closed";
        }
    }

    /** Tried again before the pause after the last wrong PIN was over; nothing was checked. */
    record PinTooSoon(BadgeId badge, long waitSeconds) implements PinRefusal {
        @Override
        public String code() {
            return "pin-too-soon";
        }
    }

    /** Too many wrong PINs for whatever badges came from this place; nothing was checked. */
    record PlaceTooOften(long waitSeconds) implements PinRefusal {
        @Override
        public String code() {
            return "place-too-often";
        }
    }

    /** The PIN is right and has lived too long: it serves for nothing but choosing another one. */
    record PinExpired(BadgeId badge) implements PinRefusal {
        @Override
        public String code() {
            return "pin-expired";
        }
    }

    /** The PIN is right and was chosen by somebody else: it serves for nothing but choosing another one. */
    record PinIsFirst(BadgeId badge) implements PinRefusal {
        @Override
        public String code() {
            return "pin-first";
        }
    }

    /** The new PIN is one of the person's last ones. */
    record PinUsedBefore(int lastOnes) implements PinRefusal {
        @Override
        public String code() {
            return "pin-used-before";
        }
    }

    /** The badge is not signed in on this tablet any more: badge and PIN are asked for again. */
    record SignedOut(BadgeId badge) implements PinRefusal {
        @Override
        public String code() {
            return "signed-out";
        }
    }
}
