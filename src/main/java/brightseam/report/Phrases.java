package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.people.Role;
import brightseam.procedure.Hold;
import brightseam.procedure.ReadingSpec;
import brightseam.traveller.Contact;
import brightseam.traveller.Disposition;
import brightseam.traveller.Handling;
import brightseam.traveller.Meaning;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.Phase;
import brightseam.traveller.WindowEnd;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What the document's values are called, on screen and on paper alike. */
public final class Phrases {

    private Phrases() {}

    /** {@code 14 Oct 2031 06:10:09}. */
    public static String when(Moment at, ZoneId zone) {
        return Words.stamp(at.wall(), zone);
    }

    /** {@code 52.5 °C}; {@code in order} or {@code not in order} for a look. */
    public static String value(ReadingSpec spec, String symbol, BigDecimal value) {
        if (spec.isPassFail()) {
            return value.signum() == 0 ? "not in order" : "in order";
        }
        return Words.quantity(value, symbol);
    }

    /** {@code 45 to 60 °C}, {@code at least 1 MΩ·cm}; {@code a look} and {@code no limit} where there is none. */
    public static String limits(ReadingSpec spec, String symbol) {
        return spec.isPassFail() ? "a look" : Words.limits(spec.limits(), symbol);
    }

    /** {@code 60 s to 5 min}, {@code at least 2 min}. */
    public static String limits(Hold hold) {
        String least = Words.duration(hold.minimum());
        return hold.maximum()
                .map(most -> (hold.minimum().isZero() ? "at most " : least + " to ") + Words.duration(most))
                .orElse("at least " + least);
    }

    /** {@code Bram Oduya (P-0201)}, {@code system ORDERS-1 for Bram Oduya (P-0201)}. */
    public static String releasedBy(TravellerDocument.Identity identity) {
        return identity.releasedThrough().map(system -> "system " + system + " for ").orElse("")
                + identity.releasedBy() + " (" + identity.releasedBy().badge() + ")";
    }

    /** {@code piece 3}, {@code pieces 1 to 4, 6}. */
    public static String pieces(Collection<Integer> pieces) {
        List<Integer> sorted = pieces.stream().distinct().sorted().toList();
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            int first = i;
            while (i + 1 < sorted.size() && sorted.get(i + 1) == sorted.get(i) + 1) {
                i++;
            }
            runs.add(first == i ? String.valueOf(sorted.get(i))
                    : sorted.get(first) + (i - first > 1 ? " to " : ", ") + sorted.get(i));
        }
        return sorted.isEmpty() ? "no piece" : (sorted.size() == 1 ? "piece " : "pieces ") + String.join(", ", runs);
    }

    /** {@code inspector and lead}. */
    public static String roles(Collection<Role> roles) {
        return roles.stream().map(role -> role.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(" and "));
    }

    /** How the signer was recognised. */
    public static String factors(String code) {
        return switch (code) {
            case "badge+pin" -> "badge and PIN";
            case "signed-in+pin" -> "signed in by badge and PIN, PIN given again";
            default -> code;
        };
    }

    /** What a signature says. */
    public static String meaning(Meaning meaning) {
        return switch (meaning) {
            case PERFORMED -> "performed as written";
            case INSPECTED -> "inspected and accepted";
            case REJECTED -> "inspected and rejected";
            case DISPOSITIONED -> "decided the disposition";
            case CORRECTED -> "corrected the entry";
            case STATED_LATE -> "stated that it was done earlier";
            case SEPARATED -> "set pieces apart";
            case SUSPECTED -> "put it under suspicion";
        };
    }

    /** Both times of a step that was entered late, who stated the earlier one, and why. */
    public static String late(Pass.Late late, ZoneId zone) {
        return "LATE ENTRY: done " + Words.stamp(late.doneAt(), zone) + " as " + late.mark().name()
                + " states, entered " + when(late.mark().at(), zone) + ". Reason: " + late.reason()
                + ". The stated time was not observed and measures nothing.";
    }

    /** What touched the pieces, such as "white cotton G-0031, lot 77/A". */
    public static String contact(Contact contact) {
        return Wording.words(contact.type()) + " " + contact.label()
                + (contact.lot().equals("-") ? "" : ", " + contact.lot());
    }

    /** What sort of nonconformance. */
    public static String cause(Cause cause) {
        return switch (cause) {
            case JOINT_EXCURSION -> "oxygen over its limit at a joint";
            case JOINT_UNPROVEN -> "joint without proof";
            case JOINT_REJECTED -> "joint rejected";
            case HOLD_OVERRUN -> "hold over its maximum";
            case HOLD_CUT_SHORT -> "hold cut short";
            case TIME_NOT_OBSERVED -> "entered late, its time not observed";
            case GAP_EXCEEDED -> "next step begun too late";
            case READING_OUT_OF_LIMITS -> "reading out of limits";
            case INSPECTION_REJECTED -> "rejected at inspection";
            case REPORTED -> "reported";
            case SUSPECT -> "suspect";
        };
    }

    /** What became of a nonconformance. */
    public static String disposition(Disposition disposition) {
        return switch (disposition) {
            case REWORK -> "rework";
            case REPAIR -> "repair";
            case USE_AS_IS -> "use as is";
            case SCRAP -> "scrap";
        };
    }

    /** How pieces were kept. */
    public static String handling(Handling handling) {
        return switch (handling) {
            case OPEN -> "in the open";
            case CLOSED_CLEAN_BIN -> "in a closed clean bin";
            case SEALED_BAG -> "in a sealed bag";
        };
    }

    /** Why a clean window ended. */
    public static String windowEnd(WindowEnd end) {
        return switch (end) {
            case RUN_OUT -> "ran out";
            case TOUCHED -> "ended: touched";
            case RETURNED -> "ended: returned to an earlier step";
            case PASSED_IN -> "ended: passed into the chamber";
            case WELDED -> "ended: welded";
            case TRAVELLER_ENDED -> "ended with the traveller";
        };
    }

    /** Where a traveller is in its life. */
    public static String phase(Phase phase) {
        return switch (phase) {
            case ACTIVE -> "on its way";
            case PASSED_IN -> "passed into the chamber";
            case CLOSED -> "closed";
            case SCRAPPED -> "scrapped";
        };
    }

    /** How a hold stands to its limits. */
    public static String verdict(HoldTaken.Verdict verdict) {
        return switch (verdict) {
            case NOT_ENDED -> "not ended";
            case WITHIN -> "within limits";
            case SHORT -> "shorter than the minimum";
            case OVER -> "over the maximum";
        };
    }
}
