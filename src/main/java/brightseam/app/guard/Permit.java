package brightseam.app.guard;

import brightseam.people.Role;
import java.util.EnumSet;
import java.util.Set;

/**
 * Who may have something done.
 *
 * @param reach whether people ask for it, or other services only, or whether it changes nothing
 * @param doers who may ask for it
 * @param signers who may sign it, where it is signed
 */
record Permit(Reach reach, Set<Role> doers, Set<Role> signers) {

    /** How far something reaches. */
    enum Reach {
        /** People ask for it. */
        PEOPLE,
        /** Other services ask for it, and the server itself; nobody else. */
        SERVICES,
        /** It only tells something. */
        READS
    }

    /** Copies the sets. */
    Permit {
        doers = Set.copyOf(doers);
        signers = Set.copyOf(signers);
    }

    /** {@code roles} may ask for it, and where it is signed, sign it. */
    static Permit of(Role... roles) {
        Set<Role> all = Set.of(roles);
        return new Permit(Reach.PEOPLE, all, all);
    }

    /** The same to be asked for, but signed by {@code roles} alone. */
    Permit signedBy(Role... roles) {
        return new Permit(reach, doers, Set.of(roles));
    }

    /** Whoever has a badge that is open. */
    static Permit everybody() {
        return new Permit(Reach.PEOPLE, EnumSet.allOf(Role.class), EnumSet.allOf(Role.class));
    }

    /** Nobody asks for it but other services. */
    static Permit services() {
        return new Permit(Reach.SERVICES, Set.of(), EnumSet.allOf(Role.class));
    }

    /** Tells something to whoever may see the page. */
    static Permit reads() {
        return new Permit(Reach.READS, Set.of(), Set.of());
    }
}
