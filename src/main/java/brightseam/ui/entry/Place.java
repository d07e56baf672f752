package brightseam.ui.entry;

import brightseam.people.Role;
import java.util.Collection;
import java.util.List;

/**
 * A screen that a role works on. Whoever has one role comes to the first one of it.
 *
 * @param role whose it is
 * @param path its address below the shop's
 * @param title what it is called
 * @param purpose what is done there, in a few words
 */
record Place(Role role, String path, String title, String purpose) {

    private static final List<Place> ALL = List.of(
            new Place(Role.FABRICATOR, "bench", "Bench", "do and sign the steps"),
            new Place(Role.FABRICATOR, "chamber", "Chamber", "check in, purge, weld"),
            new Place(Role.LEAD, "board", "Board", "what is ready, what runs out first"),
            new Place(Role.LEAD, "chamber", "Chamber", "check in, purge, weld"),
            new Place(Role.INSPECTOR, "stamp", "Stamp desk", "accept or reject, decide nonconformances"),
            new Place(Role.ADMINISTRATOR, "shop", "Shop registers", "people, bins, stations, heats, labels"),
            new Place(Role.PROCESS_CONTROL, "baths", "Baths", "analyses, additions, locks"));

    /** The screens of whoever holds {@code roles}, in the order of the roles, each once. */
    static List<Place> of(Collection<Role> roles) {
        List<Place> theirs = ALL.stream().filter(place -> roles.contains(place.role())).toList();
        return theirs.stream().filter(place -> theirs.stream().filter(other -> other.path().equals(place.path()))
                .findFirst().filter(place::equals).isPresent()).toList();
    }

    /** The first screen of each of {@code roles}. */
    static List<Place> first(Collection<Role> roles) {
        return ALL.stream().filter(place -> roles.contains(place.role())).filter(place -> ALL.stream()
                .filter(other -> other.role() == place.role()).findFirst().filter(place::equals).isPresent()).toList();
    }

    /** What a button to it says. */
    String words() {
        return title + ": " + purpose;
    }
}
