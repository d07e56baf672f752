package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.Syntax;
import brightseam.people.PersonCommand.ChangeRoles;
import brightseam.people.PersonCommand.Deactivate;
import brightseam.people.PersonCommand.GrantQualification;
import brightseam.people.PersonCommand.IssueStamp;
import brightseam.people.PersonCommand.LoseStamp;
import brightseam.people.PersonCommand.Register;
import brightseam.people.PersonCommand.ReturnStamp;
import brightseam.people.PersonCommand.SetPin;
import brightseam.people.PersonCommand.UnlockPin;
import brightseam.people.PersonCommand.VoidStamp;
import brightseam.people.PersonCommand.WithdrawStamp;
import brightseam.people.PersonEvent.FirstPinSet;
import brightseam.people.PersonEvent.PersonDeactivated;
import brightseam.people.PersonEvent.PersonRegistered;
import brightseam.people.PersonEvent.PinSet;
import brightseam.people.PersonEvent.PinUnlocked;
import brightseam.people.PersonEvent.QualificationGranted;
import brightseam.people.PersonEvent.RolesChanged;
import brightseam.people.PersonEvent.StampIssued;
import brightseam.people.PersonEvent.StampLost;
import brightseam.people.PersonEvent.StampReturned;
import brightseam.people.PersonEvent.StampVoided;
import brightseam.people.PersonEvent.StampWithdrawn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Decides commands about one person. */
public final class PersonDecider {

    private static final int REASON_LENGTH_MAX = 200;

    private PersonDecider() {}

    /**
     * The events that follow from {@code command}, or every rule that it breaks.
     *
     * @param person the person of the command's badge; empty where nobody has it
     */
    public static Decision<PersonEvent> decide(Optional<Person> person, PersonCommand command, PersonFacts facts) {
        List<Refusal> refusals = new ArrayList<>();
        if (!mayAsk(command, facts)) {
            refusals.add(new PersonRefusal.NotAdministrator(command.origin().by()));
        }
        List<PersonEvent> events;
        if (command instanceof Register register) {
            events = register(person, register, refusals);
        } else if (person.isEmpty()) {
            events = List.of();
            refusals.add(new PersonRefusal.BadgeUnknown(command.badge()));
        } else {
            events = change(person.get(), command, facts, refusals);
        }
        return refusals.isEmpty() ? Decision.accepted(events) : Decision.refused(refusals);
    }

    private static boolean mayAsk(PersonCommand command, PersonFacts facts) {
        BadgeId by = command.origin().by();
        boolean own = by.equals(command.badge()) && (command instanceof SetPin || command instanceof LoseStamp);
        boolean administrator = facts.asker()
                .filter(Person::active)
                .filter(asker -> asker.holds(Role.ADMINISTRATOR))
                .isPresent();
        return own || administrator || by.equals(Origin.SHOP);
    }

    private static List<PersonEvent> register(Optional<Person> person, Register command, List<Refusal> refusals) {
        person.ifPresent(holder -> refusals.add(new PersonRefusal.BadgeTaken(holder.badge(), holder.name())));
        if (command.badge().equals(Origin.SHOP)) {
            refusals.add(new PersonRefusal.BadgeReserved(command.badge()));
        }
        requireRole(command.badge(), command.roles(), refusals);
        String name = Syntax.text("name", command.name(), Person.NAME_LENGTH_MAX);
        return List.of(
                new PersonRegistered(command.origin(), command.badge(), name, Person.sorted(command.roles())));
    }

    private static List<PersonEvent> change(
            Person person, PersonCommand command, PersonFacts facts, List<Refusal> refusals) {
        if (!person.active() && !reachesLeavers(command)) {
            refusals.add(new PersonRefusal.PersonInactive(person.badge()));
        }
        return switch (command) {
            case Register register -> throw new IllegalArgumentException("decided above: " + register);
            case ChangeRoles change -> changeRoles(person, change, facts, refusals);
            case IssueStamp issue -> issueStamp(person, issue, facts, refusals);
            case WithdrawStamp withdraw -> withdrawStamp(person, withdraw, refusals);
            case ReturnStamp back -> ofStamp(person, back.stamp(), facts, Stamp::mayReturn, refusals,
                    new StampReturned(back.origin(), back.badge(), back.stamp(), reason(back.reason())));
            case LoseStamp lost -> ofStamp(person, lost.stamp(), facts, Stamp::mayLose, refusals,
                    new StampLost(lost.origin(), lost.badge(), lost.stamp(), reason(lost.reason())));
            case VoidStamp gone -> ofStamp(person, gone.stamp(), facts, Stamp::mayVoid, refusals,
                    new StampVoided(gone.origin(), gone.badge(), gone.stamp(), reason(gone.reason())));
            case GrantQualification grant -> List.of(
                    new QualificationGranted(grant.origin(), grant.badge(), grant.qualification()));
            case Deactivate deactivate -> deactivate(person, deactivate, facts, refusals);
            case SetPin set -> List.of(setPin(set));
            case UnlockPin unlock -> List.of(new PinUnlocked(unlock.origin(), unlock.badge()));
        };
    }

    /** What becomes of a stamp is written down after its holder has left, too. */
    private static boolean reachesLeavers(PersonCommand command) {
        return command instanceof ReturnStamp || command instanceof LoseStamp || command instanceof VoidStamp;
    }

    /** Whoever sets another's PIN knows it; so it is good for nothing but choosing the next one. */
    private static PersonEvent setPin(SetPin command) {
        BadgeId by = command.origin().by();
        return by.equals(command.badge()) || by.equals(Origin.SHOP)
                ? new PinSet(command.origin(), command.badge())
                : new FirstPinSet(command.origin(), command.badge());
    }

    private static List<PersonEvent> ofStamp(Person person, String number, PersonFacts facts,
            Predicate<Stamp> may, List<Refusal> refusals, PersonEvent event) {
        Optional<Stamp> stamp = facts.stamp().filter(found -> found.holder().equals(person.badge()));
        if (stamp.isEmpty()) {
            refusals.add(new PersonRefusal.StampUnknown(person.badge(), number));
        }
        stamp.filter(may.negate()).ifPresent(found ->
                refusals.add(new PersonRefusal.StampNot(found.number(), found.state())));
        return List.of(event);
    }

    private static List<PersonEvent> changeRoles(
            Person person, ChangeRoles command, PersonFacts facts, List<Refusal> refusals) {
        requireRole(person.badge(), command.roles(), refusals);
        if (!command.roles().contains(Role.ADMINISTRATOR)) {
            keepAnAdministrator(person, facts, refusals);
        }
        List<PersonEvent> events = new ArrayList<>();
        if (!command.roles().contains(Role.INSPECTOR)) {
            events.addAll(stampGoesBack(person, command.origin(), "no longer an inspector"));
        }
        events.add(new RolesChanged(command.origin(), person.badge(), Person.sorted(command.roles())));
        return events;
    }

    private static List<PersonEvent> issueStamp(
            Person person, IssueStamp command, PersonFacts facts, List<Refusal> refusals) {
        Syntax.identity("stamp number", command.stamp());
        if (!person.holds(Role.INSPECTOR)) {
            refusals.add(new PersonRefusal.NotInspector(person.badge()));
        }
        person.stamp().ifPresent(stamp -> refusals.add(new PersonRefusal.StampHeld(person.badge(), stamp)));
        facts.stampEverHeldBy()
                .ifPresent(holder -> refusals.add(new PersonRefusal.StampTaken(command.stamp(), holder)));
        return List.of(new StampIssued(command.origin(), person.badge(), command.stamp()));
    }

    private static List<PersonEvent> withdrawStamp(
            Person person, WithdrawStamp command, List<Refusal> refusals) {
        if (person.stamp().isEmpty()) {
            refusals.add(new PersonRefusal.NoStampHeld(person.badge()));
        }
        return stampGoesBack(person, command.origin(), reason(command.reason()));
    }

    private static List<PersonEvent> deactivate(
            Person person, Deactivate command, PersonFacts facts, List<Refusal> refusals) {
        keepAnAdministrator(person, facts, refusals);
        String reason = reason(command.reason());
        List<PersonEvent> events = new ArrayList<>(stampGoesBack(person, command.origin(), reason));
        events.add(new PersonDeactivated(command.origin(), person.badge(), reason));
        return events;
    }

    private static List<PersonEvent> stampGoesBack(Person person, Origin origin, String reason) {
        return person.stamp()
                .<List<PersonEvent>>map(stamp -> List.of(new StampWithdrawn(origin, person.badge(), stamp, reason)))
                .orElse(List.of());
    }

    private static void keepAnAdministrator(Person person, PersonFacts facts, List<Refusal> refusals) {
        if (person.holds(Role.ADMINISTRATOR) && facts.otherAdministrators() == 0) {
            refusals.add(new PersonRefusal.LastAdministrator(person.badge()));
        }
    }

    private static void requireRole(BadgeId badge, List<Role> roles, List<Refusal> refusals) {
        if (roles.isEmpty()) {
            refusals.add(new PersonRefusal.NoRole(badge));
        }
    }

    private static String reason(String reason) {
        return Syntax.text("reason", reason, REASON_LENGTH_MAX);
    }
}
