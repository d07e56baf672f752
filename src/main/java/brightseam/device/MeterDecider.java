package brightseam.device;

import static brightseam.people.Role.ADMINISTRATOR;
import static brightseam.people.Role.LEAD;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link MeterCommand} does to a meter. Lead and administrator keep meters; whoever is there types. */
public final class MeterDecider {

    private static final List<Role> KEEPERS = List.of(ADMINISTRATOR, LEAD);

    private MeterDecider() {}

    /** The events that follow from {@code command}, or every {@link MeterRefusal} against it. */
    public static Decision<MeterEvent> decide(
            Optional<MeterRecord> meter, MeterCommand command, MeterFacts facts) {
        return meter.map(known -> onKnown(known, command, facts)).orElseGet(() -> onUnknown(command, facts));
    }

    private static Decision<MeterEvent> onUnknown(MeterCommand command, MeterFacts facts) {
        return command instanceof MeterCommand.RegisterMeter c
                ? installed(c.signer(), c, c.terms(), facts)
                        .accept(new MeterEvent.Registered(c.origin(), c.meter(), c.terms(), c.signer()))
                : Decision.refused(List.of(new MeterRefusal.MeterUnknown(command.meter())));
    }

    private static Decision<MeterEvent> onKnown(MeterRecord meter, MeterCommand command, MeterFacts facts) {
        return switch (command) {
            case MeterCommand.RegisterMeter c ->
                Decision.refused(List.of(new MeterRefusal.MeterAlreadyRegistered(c.meter())));
            case MeterCommand.ChangeTerms c -> installed(c.signer(), c, c.terms(), facts).accept(
                    new MeterEvent.TermsChanged(c.origin(), c.meter(), c.terms(), c.reason(), c.signer()));
            case MeterCommand.MakeToken c -> inUse(signedBy(c.signer()), meter)
                    .refuseIf(!(meter.meter().feed() instanceof Feed.Http),
                            () -> new MeterRefusal.MeterHasNoToken(c.meter()))
                    .accept(new MeterEvent.TokenMade(c.origin(), c.meter(), c.signer()));
            case MeterCommand.TypeReading c -> typed(meter, c);
            case MeterCommand.TakeOutOfUse c -> inUse(signedBy(c.signer()), meter)
                    .accept(new MeterEvent.TakenOutOfUse(c.origin(), c.meter(), c.reason(), c.signer()));
            case MeterCommand.PutBackIntoUse c -> signedBy(c.signer())
                    .refuseIf(meter.isInUse(), () -> new MeterRefusal.MeterInUse(c.meter()))
                    .refuseIf(!facts.isGauge(), () -> new MeterRefusal.MeterIsNoGauge(c.meter()))
                    .accept(new MeterEvent.PutBackIntoUse(c.origin(), c.meter(), c.signer()));
        };
    }

    /** A value at an end of the range is taken, and flagged; beyond it the meter cannot show anything. */
    private static Decision<MeterEvent> typed(MeterRecord meter, MeterCommand.TypeReading c) {
        MeterTerms terms = MeterTerms.of(meter.meter());
        BigDecimal value = c.value();
        boolean shown = value.compareTo(terms.rangeLow()) >= 0 && value.compareTo(terms.rangeHigh()) <= 0;
        return inUse(Rules.check(), meter)
                .refuseIf(!(meter.meter().feed() instanceof Feed.Typed),
                        () -> new MeterRefusal.MeterIsNotTyped(c.meter()))
                .refuseIf(!shown, () -> new MeterRefusal.ReadingOutsideRange(c.meter(), value, terms.rangeLow(),
                        terms.rangeHigh(), terms.quantity().unit()))
                .accept(new MeterEvent.ReadingTyped(c.origin(), c.meter(), value));
    }

    private static Rules installed(Signer signer, MeterCommand command, MeterTerms terms, MeterFacts facts) {
        return signedBy(signer)
                .refuseIf(!facts.isGauge(), () -> new MeterRefusal.MeterIsNoGauge(command.meter()))
                .refuseIf(!facts.stationKnown(),
                        () -> new MeterRefusal.MeterStationUnknown(command.meter(), terms.station()));
    }

    private static Rules inUse(Rules rules, MeterRecord meter) {
        return rules.refuseFor(meter.outOfUse().map(why -> new MeterRefusal.MeterOutOfUse(meter.meter().id(), why)));
    }

    private static Rules signedBy(Signer signer) {
        return Rules.check().refuseIf(KEEPERS.stream().noneMatch(signer::has),
                () -> new MeterRefusal.MeterRoleMissing(signer.badge(), KEEPERS));
    }
}
